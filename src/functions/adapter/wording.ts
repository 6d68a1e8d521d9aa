export { type KindOf, word } from '../../catalogue/reading/wording';

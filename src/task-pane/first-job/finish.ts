import { makeButton } from '../dom';
import { savePacket } from '../drawings/save-packet';
import type { GuideContext } from './context';

/** What can be done once every step is through: papers for the shop, and the next drum. */
export function finishButtons(context: GuideContext, another: () => void): readonly HTMLElement[] {
  const { host } = context;
  const save = makeButton('Save job packet', () => void savePacket(context, host, 'pdf'), { class: 'primary' });
  return [...(host.downloads ? [save] : []), makeButton('Another drum', another)];
}

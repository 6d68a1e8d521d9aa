/** Stands for the detection of languages, which only chooses hyphenation patterns: no language is known. */
export const franc = () => 'und';

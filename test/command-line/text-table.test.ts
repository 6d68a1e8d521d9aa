import { expect, test } from 'vitest';
import { textTable } from '../../src/command-line/text-table';

test('columns are as wide as their widest cell and numbers stand to the right', () => {
  const rows = [
    ['cone', '1,250', 'x'],
    ['sleeve', '7', ''],
  ];
  expect(textTable(['set', 'pieces', 'note'], rows)).toBe(
    ['set     pieces  note', '------  ------  ----', 'cone     1,250  x', 'sleeve       7'].join('\n'),
  );
});

import { expect, test } from 'vitest';
import { functionLibrary } from '../../src/functions/function-library';
import { HostError } from '../../src/hosts/sheet-host';
import { jobPacket } from '../../src/task-pane/drawings/job-packet';
import { sentenceOf } from '../../src/task-pane/messages';
import { UserError } from '../../src/task-pane/user-error';
import { MemoryHost } from './memory-host';

test('what the user can correct is not called an error in Siltstead', () => {
  for (const error of [new UserError('Choose the units first.'), new HostError('protected', 'The sheet is protected.')])
    expect(sentenceOf(error)).toBe(error.message);
  expect(sentenceOf(new TypeError('x is not a function'))).toMatch(/^This is an error in Siltstead; .* x is not a fun/);
});

test('a packet of another workbook is refused with what it needs', async () => {
  const packet = jobPacket(new MemoryHost({ Bank: { A1: 'drums' } }), functionLibrary, 'US', 'pdf');
  expect(sentenceOf(await packet.catch((error: unknown) => error))).toBe(
    'No packet: there is no sheet Drums; a packet needs a workbook like the ready-made Cone cut plan.',
  );
});

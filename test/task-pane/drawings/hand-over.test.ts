import { afterEach, describe, expect, test, vi } from 'vitest';
import { handOver, takeOver } from '../../../src/task-pane/drawings/hand-over';
import { readRequest } from '../../../src/task-pane/drawings/read-request';
import type { DrawingRequest } from '../../../src/task-pane/drawings/request';

const requests: readonly DrawingRequest[] = [
  { what: 'patterns', units: 'US', rows: [[45, 13.08, '', '', '', 1, 2, 3, 1, 0]], names: ['Fern <b>1</b> ½ “x”'] },
  {
    what: 'cut plan',
    units: 'metric',
    plan: [[1, 1, 1, 5.5, 6, 90]],
    patterns: [[1]],
    sheetLength: 2000,
    sheetWidth: '1 m',
  },
  { what: 'drum', units: 'US', figures: { drumDiameter: '22 1/2 in', depth: 20 }, name: 'Moss' },
  {
    what: 'train',
    units: 'US',
    title: 'Farm: train',
    stages: [{ name: 'Fish tank', words: ['x'], flow: '10 gpm', limiting: true }],
    returning: 'back',
    notes: ['a note'],
  },
];

async function packed(data: unknown): Promise<string> {
  return handOver(data as DrawingRequest);
}

afterEach(() => vi.unstubAllGlobals());

describe('a drawing handed over in an address', () => {
  test('arrives from a browser that cannot compress', async () => {
    vi.stubGlobal('CompressionStream', undefined);
    const code = await handOver(requests[0]!);
    vi.unstubAllGlobals();
    expect(await takeOver(code)).toEqual(requests[0]);
  });

  test.each(requests)('arrives unchanged: $what', async (request) => {
    const code = await handOver(request);
    expect(code).toMatch(/^[\w-]+$/);
    expect(await takeOver(code)).toEqual(request);
  });

  test('too long for an address is refused in a sentence', async () => {
    const rows = Array.from({ length: 1000 }, () => Array.from({ length: 10 }, () => Math.random()));
    await expect(handOver({ what: 'patterns', units: 'US', rows, names: [] })).rejects.toThrow('select fewer rows');
  });

  test.each(['', 'no code', '%3Cscript%3E', 'AAAA', 'A'.repeat(100_000)])(
    '%# which is no such code is refused',
    async (code) => {
      await expect(takeOver(code)).rejects.toThrow('did not arrive complete');
    },
  );

  test('every cut-off code is refused', async () => {
    const code = await handOver(requests[0]!);
    for (let length = 1; length < code.length - 2; length += 7) {
      await expect(takeOver(code.slice(0, length))).rejects.toThrow(/did not arrive complete|is not as the task pane/);
    }
  });

  test('data that would unpack to far more than a drawing are not unpacked', async () => {
    const bomb = 'a'.repeat(3_000_000);
    await expect(takeOver(await packed(bomb))).rejects.toThrow('did not arrive complete');
  });

  test.each([
    null,
    7,
    [],
    {},
    { what: 'patterns' },
    { what: 'script', units: 'US' },
    { ...requests[0], rows: [[{}]] },
    { ...requests[0], rows: [[null]] },
    { ...requests[0], names: ['a', 'b'] },
    { ...requests[1], sheetLength: undefined },
    { ...requests[2], figures: { constructor: 1 } },
    { ...requests[3], stages: [{ name: 7 }] },
    { ...requests[3], title: 'x'.repeat(301) },
  ])('%# of the wrong shape is refused', (data) => {
    expect(() => readRequest(data)).toThrow('is not as the task pane sent it');
  });

  test('unknown fields are dropped', () => {
    expect(readRequest({ ...requests[2], more: 1 })).toEqual(requests[2]);
  });
});

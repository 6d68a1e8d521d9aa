/** Cautions about a cone as whole sentences with their figures, and what raises none. */
import { describe, expect, it } from 'vitest';
import { type ConeCheckRequest, coneCheck } from '../../../src/formulas/cone/cone-check';

const degree = Math.PI / 180;
/** A wall of 63.4 degrees: 0.5 m across, 0.1 m at the drain, 0.4 m high. */
const steep: ConeCheckRequest = {
  ...{ top: 0.5, bottom: 0.1, height: 0.4, pieces: 1, lap: 0, thickness: 0 },
  ...{ drum: undefined, sheetLength: undefined, sheetWidth: undefined },
};
const sleeve = { ...steep, bottom: 0.5, pieces: 2 };
/** pi 0.4 (0.25 + 0.05 + 0.01)/12. */
const volume = expect.closeTo((Math.PI * 0.4 * 0.31) / 12, 12);
const lift =
  'Wet mix poured around a cone lifts it, with up to the weight of {volume:bulk} of mix: fill the cone with water or weigh it down, and pour in layers that set.';
const nothing = [{ text: `Nothing found in the figures. ${lift}`, figures: { volume } }];

describe('each caution', () => {
  it('is a sentence, whatever is wrong', () => {
    const requests: readonly Partial<ConeCheckRequest>[] = [
      { drum: 0.49, height: 0.1 },
      { bottom: 0.5 },
      { bottom: 0.6 },
      { lap: 0.6 },
      { sheetLength: 0.6, sheetWidth: 0.6 },
      { sheetLength: 0.01, sheetWidth: 0.01 },
    ];
    for (const change of requests)
      for (const { text } of coneCheck({ ...steep, ...change })) expect(text).toMatch(/^\p{Lu}.*\.$/u);
  });
});

describe('a cone that is checked', () => {
  it('without fault still lifts in wet mix, by its volume', () => {
    expect(coneCheck(steep)).toEqual(nothing);
    expect(coneCheck({ ...steep, drum: 0.5, sheetLength: 2, sheetWidth: 2 })).toEqual(nothing);
  });

  it('with a fault lifts in wet mix too', () => {
    const [wide, last, ...more] = coneCheck({ ...steep, drum: 0.49 });
    expect(wide).toEqual({
      text: 'The top is {top} and does not fit into the drum, which is {drum} inside.',
      figures: { top: 0.5, drum: 0.49 },
    });
    expect(last).toEqual({ text: lift, figures: { volume } });
    expect(more).toEqual([]);
  });

  it('as wide as the drum fits into it, by a rounding', () => {
    expect(coneCheck({ ...steep, drum: 0.5, top: 0.5 * (1 + 1e-12) })).toHaveLength(1);
    expect(coneCheck({ ...steep, drum: 0.5, top: 0.5 * (1 + 1e-9) })).toHaveLength(2);
  });

  it('that is a sleeve does not lift, because nothing of it leans over the mix', () => {
    expect(coneCheck(sleeve)).toEqual([{ text: 'Nothing found.' }]);
    expect(coneCheck({ ...sleeve, drum: 0.49 })).toEqual([
      expect.objectContaining({ text: 'The top is {top} and does not fit into the drum, which is {drum} inside.' }),
    ]);
  });

  it.each([
    [44, 'The wall is {angle}, below 45 degrees: solids will stay on it instead of sliding to the drain.'],
    [59, 'The wall is {angle}, below 60 degrees: sticky solids may need a brush or a swirl.'],
  ])('whose wall is %s degrees is told so once', (degrees, text) => {
    const found = coneCheck({ ...steep, height: 0.2 * Math.tan(degrees * degree) });
    expect(found).toHaveLength(2);
    expect(found[0]).toEqual({
      text,
      figures: { angle: expect.closeTo(degrees * degree, 12) },
    });
  });

  it('that no pattern can have is told why, and nothing else', () => {
    expect(coneCheck({ ...steep, bottom: 0.6 })).toEqual([
      { text: 'The bottom is not allowed: give a length from 0 up to top ({top}).', figures: { top: 0.5 } },
    ]);
  });

  it('with too wide a lap is told the limit, even if there is a sheet', () => {
    // 161 degrees of a radius of 0.559 m: square to its edge the piece is as wide as the radius.
    const found = coneCheck({ ...steep, lap: 0.6, sheetLength: 0.1, sheetWidth: 0.1 });
    expect(found).toHaveLength(2);
    expect(found[0]).toEqual({
      text: 'The lap is not allowed: give less than {limit}, the width of a piece.',
      figures: { limit: { value: expect.closeTo(0.25 * Math.sqrt(5), 12), like: 'lap' } },
    });
  });

  it('whose piece is larger than the sheet is told its blank, and how many pieces go on it', () => {
    const sheet = { sheetLength: 0.6, sheetWidth: 0.6 };
    const [large] = coneCheck({ ...steep, ...sheet });
    const half = 80.5 * degree;
    expect(large!.text).toMatch(
      /^A piece has a blank of \{length:dimension\} by \{width:dimension\} and does not fit on the sheet in any rotation: cut \d pieces instead of 1\.$/,
    );
    const size = (value: number) => expect.closeTo(value, 2);
    expect(large!.figures).toEqual({
      length: size(2 * 0.559 * Math.sin(half)),
      width: size(0.559 - 0.1118 * Math.cos(half)),
    });
    const pieces = Number(/cut (\d)/.exec(large!.text)![1]);
    expect(coneCheck({ ...steep, ...sheet, pieces })).toEqual(nothing);
    expect(coneCheck({ ...steep, ...sheet, pieces: pieces - 1 })).toHaveLength(2);
  });

  it('is not held to a sheet of which only one side is given', () => {
    expect(coneCheck({ ...steep, sheetLength: 0.1 })).toEqual(nothing);
    expect(coneCheck({ ...steep, sheetWidth: 0.1 })).toEqual(nothing);
  });
});

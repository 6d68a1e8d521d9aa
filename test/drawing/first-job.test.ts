import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing-model';
import { drumSectionDrawing } from '../../src/drawing/drum-section-drawing';
import { buyingDrawing } from '../../src/drawing/first-job/buying-drawing';
import { measuringDrawing } from '../../src/drawing/first-job/measuring-drawing';
import { pouringDrawing } from '../../src/drawing/first-job/pouring-drawing';
import { fields, heightWays, widthWays } from '../../src/task-pane/first-job/fields';
import { readProfile } from '../../src/units/profile';

function wordsOf({ entities }: Drawing): readonly string[] {
  return entities.flatMap((entity) => (entity.shape === 'text' ? [entity.text] : []));
}

const [widths, cones] = [['inside', 'girth'] as const, ['angle', 'height', 'slant'] as const];

describe('the picture of where the tape goes', () => {
  test.each(widths.flatMap((width, i) => cones.map((cone, j) => ({ width, cone, i, j }))))(
    'has the letter of each field for $width and $cone',
    ({ width, cone, i, j }) => {
      const asked = [widthWays.ways[i], heightWays.ways[j]].flatMap((way) => way?.asks ?? []);
      const letters = [...asked, 'drain' as const, 'depth' as const].flatMap((id) => fields[id].letter ?? []);
      const drawn = wordsOf(measuringDrawing({ width, cone, units: 'US' })).filter((words) => /^[A-Z]$/.test(words));
      expect([...drawn].sort()).toEqual([...letters].sort());
    },
  );
});

/** A drum of 55 gal as the guide draws it: at the check, and on its stand over a pail at the leak test. */
const ofDrum = { drumDiameter: 0.5715, depth: 0.47, coneHeight: 0.235, coneBottom: 0.1016, rise: 0.0254 };
const onStand = { ...ofDrum, stand: 0.5715, drumHeight: 0.84, container: 0.37, drainDrop: 0.15 };

test('text of the pictures is at least 9 pixels high in a pane of 320 pixels', () => {
  const pictures = [
    ...widths.map((width) => measuringDrawing({ width, cone: 'slant', units: 'metric' })),
    pouringDrawing('US'),
    buyingDrawing('US'),
    ...[ofDrum, onStand].flatMap((figures) =>
      (['US', 'metric'] as const).map((units) =>
        drumSectionDrawing({ ...figures, profile: readProfile(units), isSmall: true }),
      ),
    ),
  ];
  for (const { extent, textHeight, title } of pictures) {
    // 18 rem of height at most, and a width of 280 pixels inside its frame; a letter is 1.4 times its capitals high.
    const scale = Math.min(280 / (extent.right - extent.left), 288 / (extent.top - extent.bottom));
    expect(0.85 * textHeight * scale * 1.4, title).toBeGreaterThan(9);
  }
});

test('the small picture of a drum says heights as a tape reads them, above the floor only', () => {
  const small = wordsOf(drumSectionDrawing({ ...onStand, profile: readProfile('US'), isSmall: true }));
  // 0.0254 + 0.235 + 0.47 m above the floor: 28.76 in, nearest 28 3/4 on a tape.
  expect(small).toContain('28 3/4 in');
  expect(small.filter((words) => /above (cone top|ground)/.test(words))).toEqual(['above ground']);
});

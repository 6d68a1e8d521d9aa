import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing-model';
import { buyingDrawing } from '../../src/drawing/first-job/buying-drawing';
import { measuringDrawing } from '../../src/drawing/first-job/measuring-drawing';
import { pouringDrawing } from '../../src/drawing/first-job/pouring-drawing';
import { fields, heightWays, widthWays } from '../../src/task-pane/first-job/fields';

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

test('text of the pictures is at least 9 pixels high in a pane of 320 pixels', () => {
  const pictures = [
    ...widths.map((width) => measuringDrawing({ width, cone: 'slant', units: 'metric' })),
    pouringDrawing('US'),
    buyingDrawing('US'),
  ];
  for (const { extent, textHeight, title } of pictures) {
    // 18 rem of height at most, and a width of 280 pixels inside its frame; a letter is 1.4 times its capitals high.
    const scale = Math.min(280 / (extent.right - extent.left), 288 / (extent.top - extent.bottom));
    expect(0.85 * textHeight * scale * 1.4, title).toBeGreaterThan(9);
  }
});

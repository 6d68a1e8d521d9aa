import { drawing } from './drawing';
import type { Drawing, Entity, Point } from './drawing-model';
import { text } from './shapes';

/** Several drawings as one, each below its own title, the first at the top; for files without pages. */
export function stacked(title: string, drawings: readonly Drawing[]): Drawing {
  const [first] = drawings;
  if (first === undefined) throw new RangeError('there is nothing to draw');
  if (drawings.length === 1) return first;
  const textHeight = Math.max(...drawings.map((one) => one.textHeight));
  const entities: Entity[] = [];
  let top = 0;
  for (const one of drawings) {
    const { left, bottom, top: highest } = one.extent;
    const by = { x: -left, y: top - 3 * textHeight - highest };
    entities.push(
      text({ x: 0, y: top - 1.5 * textHeight }, one.title, 1.15 * textHeight, { anchor: 'start', bold: true }),
    );
    entities.push(...one.entities.map((entity) => moved(entity, by)));
    top += bottom - highest - 5 * textHeight;
  }
  const notes = [...new Set(drawings.flatMap((one) => one.notes))];
  return drawing({ ...first, title, notes, entities, textHeight });
}

function moved(entity: Entity, by: Point): Entity {
  const at = ({ x, y }: Point): Point => ({ x: x + by.x, y: y + by.y });
  switch (entity.shape) {
    case 'line':
    case 'length dimension':
      return { ...entity, from: at(entity.from), to: at(entity.to) };
    case 'area':
      return { ...entity, boundary: entity.boundary.map(at) };
    case 'text':
      return { ...entity, at: at(entity.at) };
    default:
      return { ...entity, center: at(entity.center) };
  }
}

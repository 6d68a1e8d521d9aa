import type { Drawing, Entity, Point } from './drawing-model';

/** The same drawing larger or smaller, with its text; for diagrams, whose lengths have no meaning. */
export function scaled(drawing: Drawing, by: number): Drawing {
  const { left, bottom, right, top } = drawing.extent;
  return {
    ...drawing,
    entities: drawing.entities.map((entity) => resized(entity, by)),
    extent: { left: left * by, bottom: bottom * by, right: right * by, top: top * by },
    textHeight: drawing.textHeight * by,
  };
}

function resized(entity: Entity, by: number): Entity {
  const at = ({ x, y }: Point): Point => ({ x: x * by, y: y * by });
  switch (entity.shape) {
    case 'line':
      return { ...entity, from: at(entity.from), to: at(entity.to) };
    case 'length dimension':
      return { ...entity, from: at(entity.from), to: at(entity.to), offset: entity.offset * by };
    case 'area':
      return { ...entity, boundary: entity.boundary.map(at) };
    case 'text':
      return { ...entity, at: at(entity.at), height: entity.height * by };
    default:
      return { ...entity, center: at(entity.center), radius: entity.radius * by };
  }
}

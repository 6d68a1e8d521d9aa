import Parser, { type IArcEntity, type ILineEntity, type ITextEntity } from 'dxf-parser';

export interface ReadDxf {
  readonly header: Readonly<Record<string, unknown>>;
  readonly layers: readonly string[];
  readonly arcs: readonly IArcEntity[];
  readonly lines: readonly ILineEntity[];
  readonly texts: readonly ITextEntity[];
}

/** What an independent reader (dxf-parser) finds in a DXF file. Angles of its arcs are in radians. */
export function readDxf(file: string): ReadDxf {
  const dxf = new Parser().parseSync(file);
  if (dxf === null) throw new Error('not a DXF file');
  const of = <T>(type: string) => dxf.entities.filter((entity) => entity.type === type) as unknown as readonly T[];
  return {
    header: dxf.header,
    layers: Object.keys(dxf.tables.layer.layers),
    arcs: of<IArcEntity>('ARC'),
    lines: of<ILineEntity>('LINE'),
    texts: of<ITextEntity>('TEXT'),
  };
}

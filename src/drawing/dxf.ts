import { DxfWriter, point3d, TextHorizontalAlignment, TextVerticalAlignment, Units } from '@tarikjabiri/dxf';
import { captionLines } from './caption';
import { withoutDimensions } from './dimension-lines';
import { type Drawing, fullTurn, type LineStyle, type Point, type Primitive } from './drawing-model';
import { textLines } from './extent';
import { plainText } from './plain-text';

/** Color numbers of the AutoCAD index: cutting machines usually sort layers by them. They are never the only sign. */
const layerColors = { cut: 1, mark: 5, text: 8 } as const;

const lineTypes: Readonly<Partial<Record<LineStyle, string>>> = { dashed: 'DASHED', center: 'CENTER' };

/**
 * A drawing as DXF text, full size: millimeters for metric drawings, inches for US ones, with the header saying which.
 *
 * Layers are `cut`, `mark` and `text`; dimensions come as plain lines and text on `text`, so that switching off one layer
 * leaves only what a machine cuts or marks. Arcs are ARC entities. The same drawing always gives the same bytes.
 */
export function toDxf(drawing: Drawing): string {
  const inches = drawing.units === 'US';
  const writer = new DxfWriter();
  writer.setUnits(inches ? Units.Inches : Units.Millimeters);
  writer.setVariable('$MEASUREMENT', { 70: inches ? 0 : 1 });
  const scale = inches ? 1 / 0.0254 : 1000;
  // Dash lengths are in drawing units: 6 mm strokes read well beside a pattern of any usual size.
  const stroke = 0.006 * scale;
  writer.addLType('DASHED', '__ __ __', [stroke, -stroke / 2]);
  writer.addLType('CENTER', '____ _ ____', [3 * stroke, -stroke / 2, stroke / 2, -stroke / 2]);
  for (const [name, color] of Object.entries(layerColors)) writer.addLayer(name, color);
  const { left, bottom, right, top } = drawing.extent;
  const caption = captionLines(drawing, right - left);
  const at = ({ x, y }: Point) => point3d(rounded(x * scale), rounded(y * scale), 0);
  writer.setVariable('$EXTMIN', { 10: rounded(left * scale), 20: rounded((bottom - caption.height) * scale), 30: 0 });
  writer.setVariable('$EXTMAX', { 10: rounded(right * scale), 20: rounded(top * scale), 30: 0 });
  for (const primitive of [...withoutDimensions(drawing.entities, drawing.textHeight), ...caption.entities]) {
    add(writer, primitive, scale, at);
  }
  return writer.stringify();
}

function add(
  writer: DxfWriter,
  primitive: Primitive,
  scale: number,
  at: (point: Point) => ReturnType<typeof point3d>,
): void {
  const { layer: layerName } = primitive;
  // A tone only adds to the lines, and a filled area would disturb a cutting machine.
  if (primitive.shape === 'area') return;
  if (primitive.shape === 'text') {
    const turn = rounded(degrees(primitive.turn ?? 0));
    for (const line of textLines(primitive)) {
      writer.addText(at(line.at), rounded(primitive.height * scale), dxfText(line.text), {
        layerName,
        rotation: turn,
        horizontalAlignment: alignments[primitive.anchor],
        verticalAlignment: TextVerticalAlignment.Middle,
        secondAlignmentPoint: at(line.at),
      });
    }
    return;
  }
  const lineType = lineTypes[primitive.style];
  const options = lineType === undefined ? { layerName } : { layerName, lineType };
  if (primitive.shape === 'line') writer.addLine(at(primitive.from), at(primitive.to), options);
  else if (primitive.shape === 'circle')
    writer.addCircle(at(primitive.center), rounded(primitive.radius * scale), options);
  else {
    const { center, radius, start, sweep } = primitive;
    // An ARC runs counter-clockwise from its first angle to its second.
    const [first, last] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
    writer.addArc(at(center), rounded(radius * scale), degrees(first), degrees(last), options);
  }
}

const alignments = {
  start: TextHorizontalAlignment.Left,
  middle: TextHorizontalAlignment.Center,
  end: TextHorizontalAlignment.Right,
} as const;

/** Degrees from 0 up to 360, to a billionth and without powers of ten, which some readers cannot parse. */
function degrees(radians: number): number {
  const turned = (radians * 360) / fullTurn;
  const positive = turned - 360 * Math.floor(turned / 360);
  return Number(positive.toFixed(9)) % 360;
}

/** A millionth of a millimeter or inch. */
function rounded(value: number): number {
  return Number(value.toFixed(6)) + 0;
}

/** `%%` begins a control code and `\U+` a character in DXF; text from cells never means these. */
function dxfText(words: string): string {
  return plainText(words)
    .replace(/%(?=%)/g, '% ')
    .replace(/\\(?=[UuMm]\+)/g, '\\ ');
}

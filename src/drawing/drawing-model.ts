/**
 * A drawing as plain geometry, independent of paper, screen or cutting machine.
 *
 * Lengths are meters at full size, y points up, angles are radians counter-clockwise from +x. Arcs stay arcs: no writer
 * gets a curve that was already cut into chords. The layer and style of a line give its meaning, never its
 * color, so that every drawing reads the same in light, dark and on a black-and-white printer.
 */

/** `cut` is where to cut, `mark` is what to scribe or only see, `text` is what to read. */
export type Layer = 'cut' | 'mark' | 'text';

export type LineStyle = 'outline' | 'thin' | 'dashed' | 'center';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Line {
  readonly shape: 'line';
  readonly layer: Layer;
  readonly style: LineStyle;
  readonly from: Point;
  readonly to: Point;
}

/** `sweep` is positive counter-clockwise and less than a full turn. */
export interface Arc {
  readonly shape: 'arc';
  readonly layer: Layer;
  readonly style: LineStyle;
  readonly center: Point;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

export interface Circle {
  readonly shape: 'circle';
  readonly layer: Layer;
  readonly style: LineStyle;
  readonly center: Point;
  readonly radius: number;
}

/** A flat tone behind the lines, from 0 (none) to 1 (solid); it only adds to what lines and text already show. */
export interface Area {
  readonly shape: 'area';
  readonly layer: Layer;
  readonly boundary: readonly Point[];
  readonly tone: number;
}

/** `at` is the middle of the text's height, at its start, middle or end; a new line in the text starts a line below. */
export interface Text {
  readonly shape: 'text';
  readonly layer: 'text';
  readonly at: Point;
  readonly text: string;
  /** Height of capital letters and figures. */
  readonly height: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turn?: number;
  readonly bold?: true;
}

/** Distance between two points, drawn `offset` to the left of the way from one to the other. */
export interface LengthDimension {
  readonly shape: 'length dimension';
  readonly from: Point;
  readonly to: Point;
  readonly offset: number;
  readonly text: string;
}

/** A radius: an arrow from `tail` of the way out (0 at the center) to the arc, in the direction given; text in two lines. */
export interface RadiusDimension {
  readonly shape: 'radius dimension';
  readonly center: Point;
  readonly radius: number;
  readonly direction: number;
  readonly tail: number;
  readonly text: string;
}

export interface AngleDimension {
  readonly shape: 'angle dimension';
  readonly center: Point;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
  readonly text: string;
}

export type Dimension = LengthDimension | RadiusDimension | AngleDimension;
export type Primitive = Line | Arc | Circle | Area | Text;
export type Entity = Primitive | Dimension;

export interface Extent {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

export interface Drawing {
  readonly title: string;
  /** Sentences that the builder needs beside the drawing. */
  readonly notes: readonly string[];
  readonly entities: readonly Entity[];
  /** Everything drawn, including dimensions and text. */
  readonly extent: Extent;
  /** Height of ordinary text when the whole drawing is in view. */
  readonly textHeight: number;
  /** Whether the drawing goes on the material at full size; otherwise people only look at it. */
  readonly fullSize: boolean;
  readonly units: 'metric' | 'US';
  /** What to do if full size needs too many pages to tape together. */
  readonly tooLarge?: string;
}

export const quarterTurn = Math.PI / 2;
export const fullTurn = 2 * Math.PI;

/** The point at a distance and direction from another. */
export function polar(center: Point, radius: number, direction: number): Point {
  return { x: center.x + radius * Math.cos(direction), y: center.y + radius * Math.sin(direction) };
}

export function pointBetween(from: Point, to: Point, share: number): Point {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}

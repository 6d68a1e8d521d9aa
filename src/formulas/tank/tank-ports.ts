/**
 * Where a drum's fittings go, how high it stands, and what it weighs. Lengths in m, masses in kg.
 */

export interface TankPort {
  readonly port: string;
  readonly aboveCone: number;
  readonly aboveFloor: number;
  readonly aboveGround: number;
}

/**
 * Heights of the inlet and the outlet, m, each from the cone's top, the drum's floor and the ground.
 *
 * The inlet is a third of the water's depth above the cone's top, the outlet a third below the water line. The cone stands
 * on the drum's floor, the floor on the stand. Source: common practice, no source.
 */
export function tankPorts(depth: number, coneHeight: number, stand: number): readonly TankPort[] {
  const at = (port: string, aboveCone: number): TankPort => {
    const aboveFloor = coneHeight + aboveCone;
    return { port, aboveCone, aboveFloor, aboveGround: stand + aboveFloor };
  };
  return [at('inlet', depth / 3), at('outlet', (2 * depth) / 3)];
}

/**
 * Height of the stand, m, so that the container goes under the valve: container + what hangs below the stand + clearance.
 *
 * `drainDrop` is how far the valve's outlet hangs below the top of the stand. Source: geometry.
 */
export function tankStand(container: number, drainDrop: number, clearance: number): number {
  return container + drainDrop + clearance;
}

export interface TankWeight {
  readonly water: number;
  readonly base: number;
  readonly total: number;
  readonly aLeg: number;
  /** On each leg where two carry all, or on the only one. */
  readonly onTwo: number;
}

/** Density taken for loads, kg/m3: that of the densest fresh water, 999.97, rounded up. */
const WATER_FOR_LOADS = 1000;

/**
 * Mass of a filled drum and the load per leg, kg: V 1000 + base volume x base density + drum, over the legs.
 *
 * Volumes in m3; base density as poured, wet, kg/m3. Legs share evenly only on level, firm ground; a stand that rocks rests on
 * two of them, so the load on each of two is given too.
 * Source: definition of density.
 */
export function tankWeight(
  water: number,
  baseMix: number,
  baseDensity: number,
  drumMass: number,
  legs: number,
): TankWeight {
  const waterMass = water * WATER_FOR_LOADS;
  const base = baseMix * baseDensity;
  const total = waterMass + base + drumMass;
  return { water: waterMass, base, total, aLeg: total / legs, onTwo: total / Math.min(2, legs) };
}

export interface TankHole {
  readonly hole: number;
  readonly angle: number;
  readonly x: number;
  readonly y: number;
}

/**
 * Hole centers on a bolt circle, from its center, m: hole i at angle 2 pi (i - 1)/n, counter-clockwise from the right.
 *
 * Source: geometry of the regular polygon.
 */
export function tankCircle(holes: number, circle: number): readonly TankHole[] {
  const radius = circle / 2;
  return Array.from({ length: holes }, (_, i) => {
    const quarters = (4 * i) / holes;
    const [cosine, sine] = onCircle(quarters);
    return { hole: i + 1, angle: (quarters * Math.PI) / 2, x: radius * cosine, y: radius * sine };
  });
}

/** Cosine and sine of a number of quarter turns, exact on the axes so that no hole sits at 6e-17. */
function onCircle(quarters: number): readonly [number, number] {
  if (quarters === 0) return [1, 0];
  if (quarters === 1) return [0, 1];
  if (quarters === 2) return [-1, 0];
  if (quarters === 3) return [0, -1];
  const angle = (quarters * Math.PI) / 2;
  return [Math.cos(angle), Math.sin(angle)];
}

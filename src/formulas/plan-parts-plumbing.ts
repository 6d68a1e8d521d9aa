/**
 * Fittings and pipe of a bank of settling drums: common practice, no source. Measure your own before you buy pipe.
 */

import { type Bank, counted, measured, type Part } from './plan-bank';
import { figuresLike } from './plan-figures';

/** An inlet and an outlet through the wall of each drum. */
const PORTS = 2;

/** Of each drum: one that turns the inlet along the wall, one that turns the outlet down, one at the drain. */
const ELBOWS = 3;

export function plumbing(bank: Bank): readonly Part[] {
  const { drums, drumDiameter, drainDrop, coneBottom, pipeSize, wallSeal } = bank;
  const each = (count: number) => `${count} a drum, ${drums} drums`;
  const bore = figuresLike('dimension', { bore: coneBottom });
  const ports = PORTS * drums;
  // A port reaches half a diameter inside and half outside; two headers run along the bank.
  const length = ports * drumDiameter + drums * drainDrop + PORTS * drums * drumDiameter;
  return [
    counted('drain fittings', drums, { text: `${each(1)}, bore up to the cone’s bottom, {bore}`, figures: bore }),
    counted(
      'flattened seats',
      drums,
      `${each(1)}: a flat place for the drain fitting where the drum floor is not flat`,
    ),
    counted('drain plugs', drums, `${each(1)}, to stop the drain while the valve is worked on`),
    counted('drain valves', drums, `${each(1)}, ${pipeSize}, opened full to draw off solids; no zinc, brass or copper`),
    wallSeal === 'grommet'
      ? counted('wall grommets', ports, `${each(PORTS)}: inlet and outlet, ${pipeSize} (TANK.PORTS)`)
      : counted('bulkhead fittings', ports, `${each(PORTS)}: inlet and outlet, ${pipeSize} (TANK.PORTS)`),
    measured('pipe', 'run', length, {
      text: `${pipeSize}: {port} a port and {drop} a drain, ${drums} drums, and two headers of {header}; measure your own`,
      figures: figuresLike('run', { port: drumDiameter, drop: drainDrop, header: drums * drumDiameter }),
    }),
    counted('elbows', ELBOWS * drums, `${each(ELBOWS)}: inlet along the wall, outlet down, drain; ${pipeSize}`),
    counted('unions', ports, `${each(PORTS)}, so that a drum comes out; ${pipeSize}`),
  ];
}

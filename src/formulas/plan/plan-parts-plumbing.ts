/**
 * Fittings and pipe of a bank of settling drums: common practice, no source. Measure your own before you buy pipe.
 */

import { type Bank, counted, measuredPart, type Part } from './plan-bank';

/** An inlet and an outlet through the wall of each drum. */
const PORTS = 2;

/** Of each drum: one that turns the inlet along the wall, one that turns the outlet down, one at the drain. */
const ELBOWS = 3;

export function plumbing(bank: Bank): readonly Part[] {
  const { drums, drumDiameter, drainDrop, coneBottom, pipeSize, wallSeal } = bank;
  const ports = PORTS * drums;
  const atPorts = `${PORTS} per drum, inlet and outlet, ${pipeSize}`;
  // A port reaches half a diameter inside and half outside; two headers run along the bank.
  const length = ports * drumDiameter + drums * drainDrop + PORTS * drums * drumDiameter;
  return [
    counted('drain fittings', drums, {
      text: '1 per drum, bore up to the cone’s bottom, {coneBottom:dimension}',
      figures: { coneBottom },
    }),
    counted('flattened seats', drums, '1 per drum: a flat place for the drain fitting'),
    counted('drain plugs', drums, '1 per drum'),
    counted('drain valves', drums, `1 per drum, ${pipeSize}; no zinc, brass or copper`),
    counted(wallSeal === 'grommet' ? 'wall grommets' : 'bulkhead fittings', ports, `${atPorts} (TANK.PORTS)`),
    measuredPart(
      'pipe',
      'run',
      length,
      `${pipeSize}: one drum diameter per port, the drain drops, two headers; measure your own`,
    ),
    counted('elbows', ELBOWS * drums, `${ELBOWS} per drum: inlet along the wall, outlet down, drain; ${pipeSize}`),
    counted('unions', ports, `${atPorts}, so that you can take a drum out`),
  ];
}

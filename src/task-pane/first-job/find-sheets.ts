import { parseRange, quoteSheet } from '../../hosts/address';
import type { Block } from '../../hosts/sheet-host';
import type { CellResult } from '../../hosts/workbook-model';

/** The sheets of the cone cut plan that the guide needs, by their purpose. */
const coneRoles = ['drums', 'patterns', 'cutPlan', 'baseMix', 'stand'] as const;
const materialRoles = ['bank', 'parts', 'materials', 'calendar'] as const;
export type ConeRole = (typeof coneRoles)[number];
export type SheetRole = ConeRole | (typeof materialRoles)[number];

/** The names of the job's sheets; those of the materials come at the step that buys. */
export type JobSheets = Readonly<Record<ConeRole, string>> & Readonly<Partial<Record<SheetRole, string>>>;

interface Mark {
  /** Labels, and functions that cells must call, by address: a sheet whose rows were moved is not one of ours. */
  readonly labels: Readonly<Record<string, string>>;
  readonly calls: Readonly<Record<string, string>>;
  /** The sheet that a formula in one of these cells must refer to. */
  readonly refersTo?: readonly [addresses: string, role: SheetRole];
}

const marks: Readonly<Record<SheetRole, Mark>> = {
  drums: { labels: { A4: 'Drum', A15: 'Sheet thickness', A20: 'Gap between pieces' }, calls: { K5: 'TANK.GIRTH' } },
  patterns: { labels: { A14: 'What to check first' }, calls: { B4: 'CONE.PATTERN' }, refersTo: ['B4', 'drums'] },
  cutPlan: { labels: {}, calls: { A4: 'CUT.SHEETS', A7: 'CUT.PLAN' }, refersTo: ['A7', 'patterns'] },
  baseMix: {
    labels: { A17: 'Parts of light aggregate' },
    calls: { B5: 'CONE.BACKFILL', A22: 'CONE.MIX' },
    refersTo: ['B5', 'drums'],
  },
  stand: { labels: { A16: 'Height of the pail' }, calls: { B4: 'TANK.WEIGHT' }, refersTo: ['B4', 'baseMix'] },
  bank: { labels: { A5: 'drums', A23: 'legs' }, calls: {}, refersTo: ['B6 B8 B9 B10 B11 B14', 'drums'] },
  parts: { labels: {}, calls: { A4: 'PLAN.PARTS' }, refersTo: ['A4', 'bank'] },
  materials: { labels: { A6: 'Your own parts' }, calls: { A17: 'COST.LINES' }, refersTo: ['A17', 'parts'] },
  calendar: { labels: { A4: 'First leak test on' }, calls: { A10: 'PLAN.DATES' } },
};

/** Finds the sheets of a cone cut plan by what stands in them, whatever they are called; undefined where one is missing. */
export function findJobSheets(blocks: readonly Block[], drums?: string): JobSheets | undefined {
  const found: Partial<Record<SheetRole, string>> = {};
  for (const role of coneRoles) {
    const match = blocks.find(
      (block) => (role !== 'drums' || drums === undefined || block.sheet === drums) && isA(role, block, found),
    );
    if (match === undefined) return undefined;
    found[role] = match.sheet;
  }
  const cone = found as Record<ConeRole, string>;
  const bank = blocks.findIndex((block) => isA('bank', block, found));
  if (bank < 0) return cone;
  // A calendar refers to no other sheet; ours was added together with its bank.
  for (const role of materialRoles) {
    const match = blocks.slice(bank).find((block) => isA(role, block, found));
    if (match === undefined) return cone;
    found[role] = match.sheet;
  }
  return { ...cone, ...found };
}

function isA(role: SheetRole, block: Block, found: Partial<Record<SheetRole, string>>): boolean {
  const { labels, calls, refersTo } = marks[role];
  if (!Object.entries(labels).every(([address, label]) => valueAt(block, address) === label)) return false;
  if (!Object.entries(calls).every(([address, name]) => callsOurs(formulaAt(block, address), name))) return false;
  if (refersTo === undefined) return true;
  const [addresses, other] = refersTo;
  return addresses.split(' ').some((address) => refersToSheet(formulaAt(block, address), found[other]));
}

export function valueAt({ range, values }: Block, address: string): CellResult {
  const place = parseRange(address);
  return (place && values[place.row - range.row]?.[place.column - range.column]) ?? '';
}

function formulaAt({ range, formulas }: Block, address: string): string {
  const place = parseRange(address);
  return (place && formulas[place.row - range.row]?.[place.column - range.column]) ?? '';
}

function callsOurs(formula: string, name: string): boolean {
  return formula.toUpperCase().replaceAll('_', '.').includes(`SILT.${name}(`);
}

function refersToSheet(formula: string, sheet: string | undefined): boolean {
  if (sheet === undefined) return false;
  if (formula.includes(`${quoteSheet(sheet)}!`)) return true;
  const at = formula.indexOf(`${sheet}!`);
  return at > 0 && !/[\w'.]/.test(formula.charAt(at - 1));
}

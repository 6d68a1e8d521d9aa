import type { Harmless } from './harmless-reasons';
import type { Judged } from './judge-part';

export interface Report {
  /** What is to be looked at: changes that survive without a reason, and reasons that nothing needs. */
  readonly lines: readonly string[];
  readonly killed: number;
  /** Changes that survive for a reason. */
  readonly harmless: number;
}

export function reportOf(judged: readonly Judged[], known: Harmless): Report {
  const survivors = judged
    .filter(({ verdict }) => verdict === 'survived' || verdict === 'unreached')
    .map((one) => ({ ...one, file: fileOf(one.place), change: `${one.from} -> ${one.to}` }));
  const faults = survivors.filter(({ file, change }) => known[file]?.[change] === undefined);
  const files = new Set(judged.map(({ place }) => fileOf(place)));
  const stale = [...files].flatMap((file) =>
    Object.keys(known[file] ?? {})
      .filter((change) => !survivors.some((one) => one.file === file && one.change === change))
      .map((change) => `${file}  ${change}  is listed as harmless, but is noticed or gone`),
  );
  return {
    lines: [...faults.map((one) => `${one.place}  ${one.change}${remark(one)}`), ...stale],
    killed: judged.length - survivors.length,
    harmless: survivors.length - faults.length,
  };
}

/** What a test computes while it is loaded, it computes before any change. */
function remark({ verdict, whileLoading }: Judged): string {
  if (verdict === 'unreached') return '  (no test gets there)';
  return whileLoading ? '  (tests get there while they are loaded, too)' : '';
}

function fileOf(place: string): string {
  return place.slice(0, place.indexOf(':'));
}

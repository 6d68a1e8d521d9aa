import type { SheetHost } from '../hosts/sheet-host';
import type { Cautions, CautionWatch } from '../task-pane/checks/caution-watch';
import { placeOf } from '../task-pane/checks/place-words';
import { make, makeButton, replace } from '../task-pane/dom';
import { attempt, part } from './page-parts';

/** The line above the grid with the worst caution of the workbook, and a button that goes to the typed cell. */
export function showCautionLine(host: SheetHost, cautions: CautionWatch, openChecks: () => void): void {
  const line = part('caution-line');
  let before = '';
  const show = ({ isCurrent, findings, fault }: Cautions): void => {
    line.classList.toggle('outdated', !isCurrent);
    // The line stays until the next search ends; for another workbook it is blank at first.
    if (!isCurrent && findings.length > 0) return;
    const [worst] = findings;
    const state = JSON.stringify([isCurrent, worst, findings.length, fault]);
    if (state === before) return;
    before = state;
    line.dataset.tone = worst?.tone ?? 'none';
    if (worst === undefined) {
      replace(line, fault ?? (isCurrent ? 'No cautions in this workbook.' : 'Checking the workbook…'));
      return;
    }
    const { about, sentence, tone, spots } = worst;
    const [spot] = spots;
    const text = tone !== 'wrong' && about !== '' ? `${about}: ${sentence}` : sentence;
    const place = spot === undefined ? '' : placeOf(spot);
    const go = async (): Promise<void> => {
      if (spot !== undefined) await host.select({ sheet: spot.sheet, range: { ...spot, rows: 1, columns: 1 } });
    };
    const rest = findings.length - 1;
    replace(
      line,
      make('span', { class: 'caution-text' }, text),
      ...(spot === undefined ? [] : [makeButton(`Go to ${place}`, () => void attempt(place, go))]),
      ...(rest === 0 ? [] : [makeButton(`${rest} more in Checks`, openChecks)]),
    );
  };
  cautions.follow(show);
}

import { markupSafe } from './markup-safe';

/** A table with its column titles; `rows` are table rows in markup. A page narrower than the table lets it scroll. */
export function table(titles: readonly string[], rows: readonly string[]): string {
  const head = titles.map((title) => `<th>${markupSafe(title)}</th>`).join('');
  return `<div class="wide" tabindex="0"><table><thead><tr>${head}</tr></thead><tbody>${rows.join('\n')}</tbody></table></div>`;
}

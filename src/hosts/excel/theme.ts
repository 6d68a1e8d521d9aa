import type { HostTheme, Unsubscribe } from '../sheet-host';

const asksForDark = '(prefers-color-scheme: dark)';

/** Excel's own theme, or the browser's if Excel does not tell. */
export function excelTheme(): HostTheme {
  const theme = (Office.context as { officeTheme?: { isDarkTheme?: boolean; bodyBackgroundColor?: string } })
    .officeTheme;
  if (typeof theme?.isDarkTheme === 'boolean') return { dark: theme.isDarkTheme };
  const color = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(theme?.bodyBackgroundColor ?? '');
  if (color !== null) {
    const [red, green, blue] = color.slice(1).map((part) => Number.parseInt(part, 16)) as [number, number, number];
    return { dark: 0.2126 * red + 0.7152 * green + 0.0722 * blue < 128 };
  }
  return { dark: matchMedia(asksForDark).matches };
}

/** Excel does not report a change of theme, so it is checked when the user returns to the pane. */
export function onExcelThemeChanged(listener: () => void): Unsubscribe {
  const query = matchMedia(asksForDark);
  query.addEventListener('change', listener);
  window.addEventListener('focus', listener);
  return () => {
    query.removeEventListener('change', listener);
    window.removeEventListener('focus', listener);
  };
}

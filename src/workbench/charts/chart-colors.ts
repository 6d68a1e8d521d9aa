/** The colors of a chart. */
export interface ChartColors {
  readonly paper: string;
  readonly ink: string;
  readonly quiet: string;
  readonly line: string;
  /** The colors of the series, in their order. */
  readonly series: readonly string[];
}

/** Okabe and Ito's colors (2008, "Color universal design"), darker where they would be faint on paper. */
export const onPaper: ChartColors = {
  paper: '#fbfaf6',
  ink: '#1f2b2b',
  quiet: '#566363',
  line: '#d6d2c6',
  series: ['#0072b2', '#b36f00', '#007f5c', '#b0568a', '#2b86bd', '#c24e00'],
};

export const inTheDark: ChartColors = {
  paper: '#1d2222',
  ink: '#e9ece8',
  quiet: '#a9b5b2',
  line: '#414a49',
  series: ['#56b4e9', '#e69f00', '#1fb892', '#dd92bb', '#9ad0f0', '#f08a4b'],
};

/** Printers have white paper. */
export const inPrint: ChartColors = { ...onPaper, paper: '#ffffff' };

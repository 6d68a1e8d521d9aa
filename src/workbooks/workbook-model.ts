/** The plain workbook data model lives with the hosts, which open it; everything about files starts from here. */
export type {
  Border,
  CellData,
  CellError,
  CellResult,
  CellScalar,
  CellStyle,
  ChartData,
  ChartSeries,
  DefinedName,
  OtherChart,
  PrintSetup,
  SheetData,
  TableData,
  Validation,
  WorkbookData,
} from '../hosts/workbook-model';

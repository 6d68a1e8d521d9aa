/** The name that every workbook with our sheets has; names are compared as Excel does. */
const ours = 'siltunits';

/**
 * Has Excel start the add-in with this workbook from now on, so that its formulas are computed without opening the
 * pane. An Excel that cannot, or a workbook that may not be changed, stays as it is.
 */
export async function startWithWorkbook(names: readonly { readonly name: string }[]): Promise<void> {
  const { addin, StartupBehavior } = Office as Partial<typeof Office>;
  if (addin === undefined || StartupBehavior === undefined) return;
  if (!Office.context.requirements.isSetSupported('SharedRuntime', '1.1')) return;
  if (!names.some(({ name }) => name.toLowerCase() === ours)) return;
  try {
    await addin.setStartupBehavior(StartupBehavior.load);
  } catch {
    // The formulas work all the same once the pane is opened.
  }
}

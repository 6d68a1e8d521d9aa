/** The name that every workbook with our sheets has; names are compared as Excel does. */
const ours = 'siltunits';

/**
 * Tells Excel to start the add-in with this workbook from now on, so that its formulas work without opening the
 * pane. Nothing changes if this Excel cannot do it or the workbook is read-only.
 */
export async function startWithWorkbook(names: readonly { readonly name: string }[]): Promise<void> {
  const { addin, StartupBehavior } = Office as Partial<typeof Office>;
  if (addin === undefined || StartupBehavior === undefined) return;
  if (!Office.context.requirements.isSetSupported('SharedRuntime', '1.1')) return;
  if (!names.some(({ name }) => name.toLowerCase() === ours)) return;
  try {
    await addin.setStartupBehavior(StartupBehavior.load);
  } catch {
    // The formulas still work after the pane is opened.
  }
}

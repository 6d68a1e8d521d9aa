/** Whether a cell holds nothing to read: empty, left out, or only spaces. */
export function isBlank(value: unknown): boolean {
  return value === '' || value === null || value === undefined || (typeof value === 'string' && value.trim() === '');
}

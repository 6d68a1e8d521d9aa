/** Whether a cell is empty, left out, or holds only spaces. */
export function isBlank(value: unknown): boolean {
  return value === '' || value === null || value === undefined || (typeof value === 'string' && value.trim() === '');
}

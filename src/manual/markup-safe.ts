const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text made safe inside HTML, in an element or a quoted attribute. */
export function markupSafe(text: string): string {
  return text.replace(/[&<>"']/g, (character) => entities[character] ?? '');
}

/** The same, with what stands between back-ticks set as code. */
export function withCode(text: string): string {
  return markupSafe(text).replace(/`([^`]+)`/g, '<code>$1</code>');
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text made safe inside HTML, in an element or a quoted attribute. */
export function markupSafe(text: string): string {
  return text.replace(/[&<>"']/g, (character) => entities[character]!);
}

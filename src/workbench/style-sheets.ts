/**
 * The embedded spreadsheet puts `<style>` elements into the page's head, which the page's policy forbids. Their rules
 * become style sheets made by script, which text from a cell can never become; the elements themselves are kept
 * outside the page, where their owner can change and remove them.
 */
function takeUpStyles(page: Document): void {
  const { head } = page;
  const kept = page.createElement('div');
  const sheets = new Map<HTMLStyleElement, CSSStyleSheet>();

  const takeUp = (style: HTMLStyleElement): void => {
    const sheet = sheets.get(style) ?? new CSSStyleSheet();
    sheet.replaceSync(style.textContent);
    if (sheets.has(style)) return;
    sheets.set(style, sheet);
    page.adoptedStyleSheets.push(sheet);
  };
  const letGo = (style: HTMLStyleElement): void => {
    const sheet = sheets.get(style);
    sheets.delete(style);
    page.adoptedStyleSheets = page.adoptedStyleSheets.filter((other) => other !== sheet);
  };

  new MutationObserver((changes) => {
    for (const { target, removedNodes } of changes) {
      for (const node of removedNodes) if (node instanceof HTMLStyleElement && node.parentNode !== kept) letGo(node);
      const style = target instanceof HTMLStyleElement ? target : target.parentElement;
      if (style instanceof HTMLStyleElement && style.parentNode === kept) takeUp(style);
    }
  }).observe(kept, { childList: true, characterData: true, subtree: true });

  const keep = (style: HTMLStyleElement): void => {
    // An element that is replaced would be searched in the page and not be found.
    const replaced = [...kept.children].find(({ id }) => id !== '' && id === style.id);
    replaced?.remove();
    kept.appendChild(style);
    takeUp(style);
  };
  const { appendChild, insertBefore } = head;
  head.appendChild = (node) => {
    if (!(node instanceof HTMLStyleElement)) return appendChild.call(head, node) as typeof node;
    keep(node);
    return node;
  };
  head.insertBefore = (node, before) => {
    if (!(node instanceof HTMLStyleElement)) return insertBefore.call(head, node, before) as typeof node;
    keep(node);
    return node;
  };
}

// One package adds its styles as soon as it is loaded, so this must run before it.
takeUpStyles(document);

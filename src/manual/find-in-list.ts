/** In the page: shows, of the list of functions, those that have every word that is typed. */
const field = document.getElementById('find');
const found = document.getElementById('found');
const items = [...document.querySelectorAll<HTMLElement>('main li')];

if (field instanceof HTMLInputElement) {
  field.closest('p')?.removeAttribute('hidden');
  field.addEventListener('input', () => {
    const words = field.value.toLowerCase().split(/\s+/).filter(Boolean);
    let shown = 0;
    for (const item of items) {
      const text = (item.textContent ?? '').toLowerCase();
      item.hidden = !words.every((word) => text.includes(word));
      if (!item.hidden) shown += 1;
    }
    for (const heading of document.querySelectorAll<HTMLElement>('main h2')) {
      const list = heading.nextElementSibling;
      heading.hidden = list !== null && [...list.children].every((item) => item instanceof HTMLElement && item.hidden);
    }
    if (found !== null) found.textContent = words.length === 0 ? '' : `${shown} of ${items.length}`;
  });
}

type Attributes = Readonly<Record<string, string | boolean | undefined>>;
type Child = Node | string;

/**
 * An element with attributes and children. Text becomes text nodes and is never read as markup; attributes that could
 * run something cannot be set.
 */
export function make<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  setAll(element, attributes);
  element.append(...children);
  return element;
}

const svgNamespace = 'http://www.w3.org/2000/svg';

/** The same for a drawing. */
export function makeSvg<K extends keyof SVGElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): SVGElementTagNameMap[K] {
  const element = document.createElementNS(svgNamespace, tag);
  setAll(element, attributes);
  element.append(...children);
  return element;
}

function setAll(element: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) {
    if (/^on/i.test(name) || name === 'style') throw new Error(`${name} is not set as an attribute here`);
    if (value === true) element.setAttribute(name, '');
    else if (value !== false && value !== undefined) element.setAttribute(name, value);
  }
}

/** Puts new children in place of the old. */
export function replace(element: Element, ...children: readonly Child[]): void {
  element.replaceChildren(...children);
}

/** The same only where they differ, so that neither focus nor reading is disturbed. */
export function replaceIfChanged(element: Element, ...children: readonly Element[]): void {
  const isSame =
    children.length === element.children.length && children.every((one, at) => element.children[at]?.isEqualNode(one));
  if (!isSame) replace(element, ...children);
}

let given = 0;

/** An id that no other element has. */
export function freshId(word: string): string {
  given += 1;
  return `${word}-${given}`;
}

/** A button that does one thing. */
export function makeButton(label: string, press: () => void, attributes: Attributes = {}): HTMLButtonElement {
  const button = make('button', { type: 'button', ...attributes }, label);
  button.addEventListener('click', press);
  return button;
}

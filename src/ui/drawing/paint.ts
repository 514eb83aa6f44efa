/**
 * Puts shapes and texts into an SVG group and afterwards changes only what is different. A drawing has
 * hundreds of them, nearly all move with every key, and none has a life of its own: React, which
 * keeps a record of each, takes several times as long for the same writing (`npm run bench`).
 */
export interface SvgNode {
  readonly tag: 'g' | 'path' | 'line' | 'polyline' | 'rect' | 'text';
  readonly attributes: Readonly<Record<string, string | number>>;
  /** What is written, or what is in the group. */
  readonly content?: string | readonly SvgNode[];
}

const SVG = 'http://www.w3.org/2000/svg';

/** What was painted last into each element. */
const painted = new WeakMap<Element, SvgNode>();

export function node(tag: SvgNode['tag'], attributes: SvgNode['attributes'], content?: SvgNode['content']): SvgNode {
  return content === undefined ? { tag, attributes } : { tag, attributes, content };
}

/** @param place an element that nobody else puts anything into */
export function paint(place: Element, nodes: readonly SvgNode[]): void {
  let next = place.firstElementChild;
  for (const one of nodes) {
    let element = next;
    if (element === null || element.localName !== one.tag) {
      element = place.ownerDocument.createElementNS(SVG, one.tag);
      if (next === null) place.append(element);
      else next.replaceWith(element);
    }
    paintOne(element, one);
    next = element.nextElementSibling;
  }
  while (next !== null) {
    const after: Element | null = next.nextElementSibling;
    next.remove();
    next = after;
  }
}

function paintOne(element: Element, next: SvgNode): void {
  const before = painted.get(element);
  painted.set(element, next);
  const { attributes } = next;
  // These are records of our own making, and no list of their keys is made hundreds of times a key.
  for (const name in attributes) {
    const value = attributes[name];
    if (before?.attributes[name] !== value) element.setAttribute(name, String(value));
  }
  for (const name in before?.attributes) {
    if (!(name in attributes)) element.removeAttribute(name);
  }
  const { content = '' } = next;
  if (typeof content !== 'string') paint(element, content);
  else if (before?.content !== content) write(element, content);
}

/** In the same piece of text, where there is one: the browser keeps what it knows of it. */
function write(element: Element, text: string): void {
  const { firstChild } = element;
  if (firstChild instanceof Text && element.childNodes.length === 1) firstChild.data = text;
  else if (text !== '' || firstChild !== null) element.textContent = text;
}

/** Runs in the page: what every visible text is painted with, and what lies under it. */

export interface Painted {
  readonly what: string;
  readonly color: string;
  /** Of the text and everything around it, from 0 to 1. */
  readonly opacity: number;
  /** Colours under it, the nearest first; the last one lets nothing through. */
  readonly under: readonly string[];
}

export function paintedTexts(): Painted[] {
  const style = (element: Element, pseudo?: string) => getComputedStyle(element, pseudo);

  function chain(element: Element): Element[] {
    return element.parentElement === null ? [element] : [element, ...chain(element.parentElement)];
  }

  /** On screen: drawn, and not cut away to a point for who only listens. */
  function isSeen(element: Element): boolean {
    if (!element.checkVisibility({ visibilityProperty: true, opacityProperty: true })) return false;
    return chain(element).every((each) => {
      const { width, height } = each.getBoundingClientRect();
      return each.tagName === 'HTML' || style(each).display === 'contents' || width > 1 || height > 1;
    });
  }

  const opacityOf = (element: Element) =>
    chain(element).reduce((product, each) => product * Number(style(each).opacity), 1);
  const backgrounds = (element: Element) => [...chain(element).map((each) => style(each).backgroundColor), 'white'];

  /** What is filled under a point of a drawing, the last one drawn first. */
  function fillsAt(drawing: SVGSVGElement, text: Element, at: DOMPoint): string[] {
    return [...drawing.querySelectorAll<SVGGeometryElement>('path, rect, polygon, polyline, circle')]
      .filter((shape) => (text.compareDocumentPosition(shape) & Node.DOCUMENT_POSITION_PRECEDING) !== 0)
      .filter((shape) => shape.checkVisibility() && style(shape).fill !== 'none')
      .filter((shape) => shape.isPointInFill(at.matrixTransform((shape.getScreenCTM() as DOMMatrix).inverse())))
      .map((shape) => style(shape).fill)
      .filter((fill) => !fill.startsWith('url'))
      .reverse();
  }

  function inDrawing(text: SVGTextElement): Painted[] {
    const drawing = text.ownerSVGElement as SVGSVGElement;
    const { x, y, width, height } = text.getBBox();
    const matrix = text.getScreenCTM() as DOMMatrix;
    const spots = [0.1, 0.5, 0.9].map((part) => new DOMPoint(x + width * part, y + height / 2).matrixTransform(matrix));
    return spots.map((spot) => ({
      what: `“${text.textContent}” in a drawing`,
      color: style(text).fill,
      opacity: opacityOf(text),
      under: [...fillsAt(drawing, text, spot), ...backgrounds(drawing)],
    }));
  }

  function onPage(element: Element, what: string, color: string): Painted {
    return { what, color, opacity: opacityOf(element), under: backgrounds(element) };
  }

  function words(): Painted[] {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const found: Painted[] = [];
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement;
      const text = (node.textContent ?? '').trim();
      if (text === '' || parent === null || parent.closest('svg, script, style, option') !== null) continue;
      if (isSeen(parent)) found.push(onPage(parent, `“${text.slice(0, 40)}”`, style(parent).color));
    }
    return found;
  }

  function controls(): Painted[] {
    return [...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select')]
      .filter(isSeen)
      .map((control) => {
        const shown = control instanceof HTMLInputElement && control.value === '' ? '::placeholder' : undefined;
        return onPage(control, `what stands in ${control.id || control.tagName}`, style(control, shown).color);
      });
  }

  const drawn = [...document.querySelectorAll<SVGTextElement>('svg text')].filter(isSeen);
  return [...words(), ...controls(), ...drawn.flatMap(inDrawing)];
}

/** Runs in the page: where the texts of each drawing stand, and which of them stand on each other. */

/** One sentence for each two texts whose boxes share more than a hair; texts of one number belong together. */
export function textsOnTexts(): { readonly texts: number; readonly overlaps: string[] } {
  /** A box holds the room of a whole line: two lines of one caption share this much of it, and no letters meet. */
  const HAIR = 2;

  function boxOf(text: SVGTextElement): DOMRect {
    const { x, y, width, height } = text.getBBox();
    const matrix = text.getScreenCTM() as DOMMatrix;
    const corners = [
      [x, y],
      [x + width, y],
      [x, y + height],
      [x + width, y + height],
    ].map(([left, top]) => new DOMPoint(left, top).matrixTransform(matrix));
    const xs = corners.map((corner) => corner.x);
    const ys = corners.map((corner) => corner.y);
    const [left, top] = [Math.min(...xs), Math.min(...ys)];
    return new DOMRect(left, top, Math.max(...xs) - left, Math.max(...ys) - top);
  }

  function shared(one: DOMRect, other: DOMRect): [number, number] {
    return [
      Math.min(one.right, other.right) - Math.max(one.left, other.left),
      Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top),
    ];
  }

  function overlapsIn(drawing: SVGSVGElement): string[] {
    const name = drawing.closest('[aria-label]')?.getAttribute('aria-label') ?? drawing.ariaLabel ?? '';
    const texts = [...drawing.querySelectorAll('text')]
      .filter((text) => text.textContent.trim() !== '')
      .map((text) => ({ text, box: boxOf(text) }));
    return texts.flatMap(({ text, box }, index) =>
      texts.slice(index + 1).flatMap((other) => {
        if (text.parentElement === other.text.parentElement && text.parentElement?.tagName === 'g') {
          const isFigure = text.classList.contains('whole') || text.classList.contains('part');
          if (isFigure) return [];
        }
        const [across, down] = shared(box, other.box);
        if (across <= HAIR || down <= HAIR) return [];
        const by = `${across.toFixed(1)} × ${down.toFixed(1)} px`;
        return [`“${text.textContent}” and “${other.text.textContent}” by ${by} (${name.slice(0, 60)})`];
      }),
    );
  }

  const drawings = [...document.querySelectorAll<SVGSVGElement>('svg')].filter((drawing) => drawing.checkVisibility());
  return {
    texts: drawings.reduce((count, drawing) => count + drawing.querySelectorAll('text').length, 0),
    overlaps: drawings.flatMap(overlapsIn),
  };
}

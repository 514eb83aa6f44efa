/** Where a field leads to: the next field of the form in the order of the page, or a button that waits in between. */

export interface Stop {
  readonly words: string;
  /** The words say it all by themselves, as a button's do. */
  readonly isButton: boolean;
  go(): void;
}

const STOPS = '.field [data-place], [data-keypad-next]';

/** @returns null after the last one */
export function nextStop(from: Element): Stop | null {
  const scope = from.closest('form') ?? document.body;
  const next = [...scope.querySelectorAll<HTMLElement>(STOPS)].find((stop) => isAfter(stop, from));
  if (next === undefined) return null;
  if (next instanceof HTMLButtonElement) {
    return { words: next.textContent, isButton: true, go: () => next.click() };
  }
  return { words: nameOfField(next), isButton: false, go: () => goInto(next) };
}

export function nameOfField(control: Element): string {
  const labels = control instanceof HTMLInputElement || control instanceof HTMLSelectElement ? control.labels : null;
  return control.getAttribute('aria-label') ?? labels?.[0]?.textContent ?? '';
}

function goInto(field: HTMLElement): void {
  field.focus();
  if (field instanceof HTMLInputElement) field.select();
}

function isAfter(stop: Node, from: Node): boolean {
  return (from.compareDocumentPosition(stop) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
}

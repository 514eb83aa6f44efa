/** Runs in the page: what can be touched, and how large it is to a finger. */

export interface TooSmall {
  readonly what: string;
  readonly width: number;
  readonly height: number;
}

export function controlsBelow(least: number): { readonly all: number; readonly small: TooSmall[] } {
  const CONTROLS = 'button, a[href], input, select, textarea, summary, [role="button"]';

  function isSeen(element: Element): boolean {
    if (!element.checkVisibility({ visibilityProperty: true })) return false;
    for (let each: Element | null = element; each !== null; each = each.parentElement) {
      const { width, height } = each.getBoundingClientRect();
      if (width <= 1 && height <= 1 && getComputedStyle(each).display !== 'contents') return false;
    }
    return true;
  }

  /** A tick box is as large as its label. */
  function boxOf(control: Element): DOMRect {
    const own = control.getBoundingClientRect();
    if (!(control instanceof HTMLInputElement) || control.type !== 'checkbox') return own;
    return control.labels?.[0]?.getBoundingClientRect() ?? own;
  }

  /** How far the control answers beyond its box, where it has been given more room than it shows. */
  function reach(control: Element): TooSmall {
    control.scrollIntoView({ block: 'center', inline: 'center' });
    const { left, top, width, height } = boxOf(control);
    const [x, y] = [left + width / 2, top + height / 2];
    const answers = (dx: number, dy: number) => {
      const hit = document.elementFromPoint(x + dx, y + dy);
      return hit !== null && (control.contains(hit) || hit.closest('label')?.control === control);
    };
    const half = least / 2 - 0.5;
    const across = answers(-half, 0) && answers(half, 0);
    const down = answers(0, -half) && answers(0, half);
    const what = `${control.tagName.toLowerCase()}.${control.getAttribute('class') ?? ''} “${nameOf(control)}”`;
    return { what, width: across ? least : Math.round(width), height: down ? least : Math.round(height) };
  }

  function nameOf(control: Element): string {
    return (control.getAttribute('aria-label') ?? control.textContent.trim()).slice(0, 40) || control.id;
  }

  const all = [...document.querySelectorAll(CONTROLS)].filter(isSeen);
  // Half a pixel is lost where a grid of the page falls between two of the screen's.
  const isSmall = ({ width, height }: { width: number; height: number }) => width < least - 0.5 || height < least - 0.5;
  const small = all
    .filter((control) => isSmall(boxOf(control)))
    .map(reach)
    .filter(isSmall);
  return { all: all.length, small };
}

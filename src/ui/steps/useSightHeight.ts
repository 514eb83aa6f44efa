/**
 * How tall the elevation may be, so that the risers under it stay in sight: at a desk what bar, steps
 * and strip leave of the window, measured; on a tablet the upper part of it, with the fields below.
 */
import { useLayoutEffect, useState } from 'react';

/** Where look/steps.css gives the sheet its height, whatever is in it: a drawing that fills it does not move it. */
const DESK = { width: 1100, height: 600 };
const LEAST = 250;
/** At a desk it rather grows small than has its foot cut off by the risers under it. */
const LEAST_AT_DESK = 180;
const SHARE_OF_TABLET = 0.36;
/** Under the drawing, in pixels. */
const BELOW = 8;

/**
 * For what stands in the sheet: it is measured with the drawing in its place.
 * @returns pixels
 */
export function useSightHeight(sheet: HTMLElement | null): number {
  const [height, setHeight] = useState(() => heightIn(sheet));
  useLayoutEffect(() => {
    const measure = () => setHeight(heightIn(sheet));
    measure();
    window.addEventListener('resize', measure);
    const observer = typeof ResizeObserver === 'undefined' ? null : new ResizeObserver(measure);
    if (sheet !== null) observer?.observe(sheet);
    return () => {
      window.removeEventListener('resize', measure);
      observer?.disconnect();
    };
  }, [sheet]);
  return height;
}

function heightIn(sheet: HTMLElement | null): number {
  const { innerWidth, innerHeight } = window;
  const place = sheet?.querySelector('.sight-place');
  if (!sheet || !place || innerWidth < DESK.width || innerHeight < DESK.height)
    return Math.max(LEAST, Math.round(innerHeight * SHARE_OF_TABLET));
  const above = place.getBoundingClientRect().top - sheet.getBoundingClientRect().top + sheet.scrollTop;
  return Math.max(LEAST_AT_DESK, Math.floor(sheet.clientHeight - above - BELOW));
}

import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** What a drawing is made for where nobody measures, as in a test. */
const UNMEASURED = 720;

/** Width in whole pixels of the place that an element has, kept up as it changes. */
export function useWidth<T extends HTMLElement>(): [RefObject<T | null>, number] {
  const place = useRef<T>(null);
  const [width, setWidth] = useState(UNMEASURED);
  useLayoutEffect(() => {
    const element = place.current;
    if (element === null || typeof ResizeObserver === 'undefined') return undefined;
    const measure = () => setWidth(Math.max(1, Math.floor(element.clientWidth)));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [place, width];
}

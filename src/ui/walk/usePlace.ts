import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

export interface Place {
  readonly width: number;
  readonly height: number;
}

/** What is drawn for where nobody measures, as in a test. */
const UNMEASURED: Place = { width: 720, height: 400 };

/** Width and height in whole pixels of the place that an element has, kept up as it changes. */
export function usePlace<T extends HTMLElement>(): [RefObject<T | null>, Place] {
  const ref = useRef<T>(null);
  const [place, setPlace] = useState(UNMEASURED);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null || typeof ResizeObserver === 'undefined') return undefined;
    const measure = () => {
      const width = Math.max(1, Math.floor(element.clientWidth));
      const height = Math.max(1, Math.floor(element.clientHeight));
      setPlace((before) => (before.width === width && before.height === height ? before : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, place];
}

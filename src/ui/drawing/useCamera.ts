/**
 * A camera on an element. While a gesture goes on, the picture that is there is moved and scaled as a
 * whole, which costs no painting, and React hears nothing of it; when it has come to rest the drawing
 * is made anew for that zoom, so that texts and lines have their own size again and what has room now
 * gets its number.
 */
import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import type { Box, Drawing } from '../../core/drawing/drawing';
import { type Point, point } from '../../core/geometry/point';
import {
  type Camera,
  type Ground,
  hold,
  inkIn,
  isWhole,
  pictureIn,
  placeAt,
  reveal,
  transformOf,
  wholeOf,
} from './camera';
import { afterKey, watchGestures } from './gestures';

/** A gesture has come to rest after so many milliseconds. */
const REST = 140;

export interface CameraOnPlace {
  readonly place: RefObject<HTMLDivElement | null>;
  readonly group: RefObject<SVGGElement | null>;
  /** The zoom that the drawing is to be made for. */
  readonly zoom: number;
  /** Says which drawing is there now, and for which zoom it has been made: some of its ink is to be seen. */
  readonly drawn: (ground: Ground, zoom: number, drawing: Drawing) => void;
  /** What a key would do, for buttons. */
  readonly press: (key: string) => void;
  readonly reveal: (box: Box) => void;
  readonly placeOf: (event: { readonly clientX: number; readonly clientY: number }) => Point;
}

export function useCamera(ground: Ground): CameraOnPlace {
  const place = useRef<HTMLDivElement>(null);
  const group = useRef<SVGGElement>(null);
  const camera = useRef<Camera>(wholeOf(ground));
  /** Where the picture that is there was taken from. */
  const taken = useRef<Camera>(wholeOf(ground));
  const grounds = useRef(ground);
  const drawnFor = useRef(1);
  const rest = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const [zoom, setZoom] = useState(1);

  const apply = useCallback(() => {
    taken.current = camera.current;
    group.current?.setAttribute('transform', transformOf(camera.current, grounds.current, drawnFor.current));
    group.current?.ownerSVGElement?.style.removeProperty('transform');
    place.current?.classList.remove('is-moving');
    place.current?.classList.toggle('is-close', !isWhole(camera.current));
  }, []);
  const slide = useCallback(() => {
    const { scale, x, y } = pictureIn(taken.current, camera.current, grounds.current);
    group.current?.ownerSVGElement?.style.setProperty('transform', `translate(${x}px, ${y}px) scale(${scale})`);
    if (place.current?.classList.contains('is-moving') === false) place.current.classList.add('is-moving');
    place.current?.classList.toggle('is-close', !isWhole(camera.current));
  }, []);
  const move = useCallback(
    (next: Camera) => {
      camera.current = next;
      slide();
      clearTimeout(rest.current);
      rest.current = setTimeout(() => {
        apply();
        setZoom(camera.current.zoom);
      }, REST);
    },
    [apply, slide],
  );
  useEffect(() => {
    if (place.current === null) return undefined;
    const stop = watchGestures(place.current, { camera: () => camera.current, ground: () => grounds.current, move });
    return () => {
      stop();
      clearTimeout(rest.current);
    };
  }, [move]);

  const press = useCallback(
    (key: string) => move(afterKey(key, camera.current, grounds.current) ?? camera.current),
    [move],
  );
  const show = useCallback(
    (box: Box) => {
      if (!isWhole(camera.current)) move(reveal(camera.current, grounds.current, box));
    },
    [move],
  );
  const placeOf = useCallback<CameraOnPlace['placeOf']>(({ clientX, clientY }) => {
    const { left = 0, top = 0 } = place.current?.getBoundingClientRect() ?? {};
    return placeAt(camera.current, grounds.current, point(clientX - left, clientY - top));
  }, []);
  // The stair, the page or the zoom has changed: one goes on looking at the same place of it.
  const drawn = useCallback(
    (next: Ground, made: number, drawing: Drawing) => {
      drawnFor.current = made;
      grounds.current = { ...next, ink: inkIn(drawing) };
      const before = camera.current;
      camera.current = isWhole(before) ? wholeOf(next) : hold(before, grounds.current);
      apply();
      // A smaller stair is not come as close to: its numbers are drawn anew for where one is now.
      if (camera.current.zoom !== before.zoom) setZoom(camera.current.zoom);
    },
    [apply],
  );
  return { place, group, zoom, drawn, press, reveal: show, placeOf };
}

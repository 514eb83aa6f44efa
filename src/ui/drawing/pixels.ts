/**
 * A drawing's own pixels: they count from the upper left corner of its frame, y down. Texts and lines that keep their
 * size keep it in pixels, so that a key which changes the scale of a stair does not change every one of them.
 */
import type { Box, Drawing } from '../../core/drawing/drawing';

export interface Pixels {
  /** @param mm across, in the drawing's millimetres */
  x(mm: number): number;
  /** @param mm up, in the drawing's millimetres */
  y(mm: number): number;
  /** @param mm a length */
  size(mm: number): number;
}

export function pixelsOf({ frame, perPixel }: Pick<Drawing, 'frame' | 'perPixel'>): Pixels {
  const { left, top } = frame;
  return {
    x: (mm) => rounded((mm - left) / perPixel),
    y: (mm) => rounded((top - mm) / perPixel),
    size: (mm) => rounded(mm / perPixel),
  };
}

/** A hundredth of a pixel is nothing that can be seen, and keeps the page's text short. */
export function rounded(pixels: number): number {
  return Math.round(pixels * 100) / 100;
}

export function boxInPixels({ left, right, bottom, top }: Box, pixels: Pixels) {
  return { x: pixels.x(left), y: pixels.y(top), width: pixels.size(right - left), height: pixels.size(top - bottom) };
}

/** The axis of runs: round lengths, as many as have room for their figures. */
import type { UnitSystem } from '../../core/units/length';
import { runText } from './searchWords';

export interface Axis {
  /** Pixels. */
  readonly left: number;
  readonly right: number;
  /** Steps of the grid. */
  readonly from: number;
  readonly to: number;
}

/** Steps of the grid from one figure to the next: half an inch and up, 10 mm and up. */
const STRIDES: Readonly<Record<UnitSystem, readonly number[]>> = {
  imperial: [8, 16, 32, 64, 128],
  metric: [10, 20, 50, 100, 200],
};
/** Pixels that a figure takes with the air beside it. */
const ROOM = 52;

export function axisTicks(
  { left, right, from, to }: Axis,
  gridMm: number,
  units: UnitSystem,
): readonly { readonly steps: number; readonly text: string }[] {
  const perStep = (right - left) / (to - from);
  const strides = STRIDES[units];
  const stride = strides.find((steps) => steps * perStep >= ROOM) ?? (strides.at(-1) as number);
  const ticks: { steps: number; text: string }[] = [];
  for (let steps = Math.ceil(from / stride) * stride; steps <= to; steps += stride) {
    ticks.push({ steps, text: runText(steps * gridMm, units) });
  }
  return ticks;
}

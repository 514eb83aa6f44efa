/**
 * Which unknown matters: for each finish that nobody knows yet, how far the usual thicknesses of it would carry
 * the first and the last riser of the stair, once it is cut as it is laid out now. The worst comes first.
 */
import { type FinishSurface, likelyFinishes } from './finishEffect';
import type { StairLayout } from './layoutStair';

export interface Driver {
  readonly surface: FinishSurface;
  /** From the least to the most that riser 1, and riser N, would become. */
  readonly firstRiser: number;
  readonly lastRiser: number;
}

const KEY_OF: Readonly<Record<FinishSurface, string>> = {
  lower: 'survey.lowerToAdd',
  upper: 'survey.upperToAdd',
  tread: 'steps.treadThickness',
};

const SURFACES = Object.keys(KEY_OF) as readonly FinishSurface[];

/** @returns the one that moves riser 1 most, first; equal ones by riser N; empty where everything is known */
export function unknownDrivers(layout: StairLayout): readonly Driver[] {
  return SURFACES.filter((surface) => layout.job.unknowns.includes(KEY_OF[surface]))
    .map((surface): Driver => {
      const effects = likelyFinishes(layout, surface, { riserMax: null, variation: null }).map(({ effect }) => effect);
      return {
        surface,
        firstRiser: span(effects.map(({ firstRiser }) => firstRiser)),
        lastRiser: span(effects.map(({ lastRiser, lip }) => lastRiser + lip)),
      };
    })
    .sort((a, b) => b.firstRiser - a.firstRiser || b.lastRiser - a.lastRiser);
}

function span(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}

/** How thick each finish may come out so that every riser stays within the rules in force, once the stair is cut. */
import { limitFor } from '../codes/rulePack';
import { type FinishSurface, type FinishWindow, finishWindow, type RiserLimits } from '../layout/finishEffect';
import { toMm } from '../units/exact';
import type { StairPlan } from './planUnjudged';

export interface SurfaceWindow {
  readonly surface: FinishSurface;
  /** Null: no thickness does it. */
  readonly window: FinishWindow | null;
}

const SURFACES: readonly FinishSurface[] = ['lower', 'upper', 'tread'];

export function riserLimits({ rules }: Pick<StairPlan, 'rules'>): RiserLimits {
  const limit = (field: string) => {
    const found = limitFor(rules, field);
    return found === null ? null : toMm(found);
  };
  return { riserMax: limit('riser.max'), variation: limit('variation.riser.max') };
}

export function finishWindows(plan: Pick<StairPlan, 'rules' | 'layout'>): readonly SurfaceWindow[] {
  const limits = riserLimits(plan);
  return SURFACES.map((surface) => ({ surface, window: finishWindow(plan.layout, surface, limits) }));
}

/** What hangs over the flight: its underside, what a person stands on under it, and what is left between. */
import type { StairPlan } from '../plan/planStair';
import { toMm } from '../units/exact';
import type { RowMeasure } from './measures';
import { type Because, type Entry, same, type Teller } from './teller';

const mm = { unit: 'mm', shown: 'fine' } as const;

export const OBSTACLES = {
  obstacle: {
    unit: 'mm',
    shown: 'down',
    result: (plan, step) => clearanceOf(plan, step)?.clearance ?? null,
    because: (tell, step) => ({
      formula: 'obstacle',
      terms: [tell.of('under', `obstacleUnder:${step}`), tell.of('stands', `obstacleStands:${step}`)],
    }),
  },
  obstacleUnder: { ...mm, result: (plan, step) => exactOf(clearanceOf(plan, step)?.under), because: underside },
  obstacleStands: { ...mm, result: (plan, step) => exactOf(clearanceOf(plan, step)?.stands), because: stands },
} satisfies Partial<Record<RowMeasure, Entry>>;

function clearanceOf({ layout }: Pick<StairPlan, 'layout'>, step: number) {
  return layout.obstacles[step - 1];
}

function exactOf(exact: Parameters<typeof toMm>[0] | undefined): number | null {
  return exact === undefined ? null : toMm(exact);
}

/** At the end where it is tightest, or on the straight line between the ends, over the landing nosing. */
function underside(tell: Teller, step: number): Because {
  const at = clearanceOf(tell.plan, step)?.at;
  const floor = tell.length('fL', 'survey.lowerToAdd');
  if (at === 'near') return { formula: 'obstacleUnder', terms: [tell.ofObstacle('h', step, 'height'), floor] };
  if (at === 'far') return { formula: 'obstacleUnder', terms: [tell.ofObstacle('h', step, 'heightFar'), floor] };
  return {
    formula: 'obstacleUnder.between',
    terms: [
      tell.ofObstacle('hn', step, 'height'),
      tell.ofObstacle('hf', step, 'heightFar'),
      tell.ofObstacle('pn', step, 'near'),
      tell.ofObstacle('pf', step, 'far'),
      tell.of('X', 'headerFace'),
      tell.of('N', 'risers', 'count'),
      tell.of('G', 'run'),
      tell.length('n', 'steps.nosing'),
      floor,
    ],
  };
}

function stands(tell: Teller, step: number): Because {
  const clearance = clearanceOf(tell.plan, step);
  if (clearance?.standsOn === 'lower') return { formula: 'obstacleStands.lower', terms: [] };
  if (clearance?.standsOn === 'upper' || clearance?.at === 'landing') return same(tell.of('H', 'totalRise'));
  return {
    formula: 'obstacleStands.flight',
    terms: [
      tell.of('R', 'unitRise'),
      tell.of('G', 'run'),
      tell.of('X', 'headerFace'),
      tell.ofObstacle('p', step, clearance?.at === 'far' ? 'far' : 'near'),
      tell.length('n', 'steps.nosing'),
    ],
  };
}

/**
 * Every number can be asked why it is what it is: the sum, what went into it, and where each of those
 * came from, down to the reading. The result is the layout's own number and not worked out again here;
 * that the terms lead to it is what the tests hold an evaluator of their own against.
 */
import type { StairPlan } from '../plan/planStair';
import { FLIGHT, POLE } from './flightMeasures';
import { FLOOR, TOES } from './floorMeasures';
import type { Explanation, Measure, PlainMeasure, RowMeasure } from './measures';
import { OBSTACLES } from './obstacleMeasures';
import { CENTRES, SPACE } from './spaceMeasures';
import { MARKS, STRINGER } from './stringerMeasures';
import { type Entry, Teller } from './teller';
import { RISER_RIPS, TOP } from './topMeasures';

const PLAIN: Readonly<Record<PlainMeasure, Entry>> = { ...FLIGHT, ...FLOOR, ...STRINGER, ...TOP, ...SPACE };
const ROWS: Readonly<Record<RowMeasure, Entry>> = {
  ...POLE,
  ...MARKS,
  ...RISER_RIPS,
  ...CENTRES,
  ...TOES,
  ...OBSTACLES,
};

/** @returns null for a number that this stair does not have */
export function explain(plan: StairPlan, measure: Measure): Explanation | null {
  const { entry, step } = find(measure);
  const result = entry.result(plan, step);
  if (result === null) return null;
  const tell = new Teller(plan, (other) => resultOf(plan, other));
  const { formula, terms } = entry.because(tell, step);
  return { measure, formula, terms, result, unit: entry.unit, rounding: entry.shown };
}

/** Everything that can be asked about this stair, the rows one by one. */
export function measuresOf(plan: StairPlan): readonly Measure[] {
  const { layout } = plan;
  const longest = Math.max(layout.flight.risers, layout.width?.stringers ?? 0, layout.obstacles.length);
  const steps = Array.from({ length: longest + 1 }, (_, step) => step);
  const rows = Object.keys(ROWS) as RowMeasure[];
  const all: Measure[] = [
    ...(Object.keys(PLAIN) as PlainMeasure[]),
    ...rows.flatMap((name) => steps.map((step): Measure => `${name}:${step}`)),
  ];
  return all.filter((measure) => resultOf(plan, measure) !== null);
}

function resultOf(plan: StairPlan, measure: Measure): number | null {
  const { entry, step } = find(measure);
  return entry.result(plan, step);
}

function find(measure: Measure): { readonly entry: Entry; readonly step: number } {
  const [name, step] = measure.split(':') as [PlainMeasure, undefined] | [RowMeasure, string];
  return step === undefined ? { entry: PLAIN[name], step: 0 } : { entry: ROWS[name], step: Number(step) };
}

/** Stringers for the screening: the span, the throat and the spacing that a test asks for, on a stair of its own. */
import type { LumberBook } from '../../../src/core/carry/lumber';
import { type Carry, screenCarry } from '../../../src/core/carry/screenCarry';
import type { StepName } from '../../../src/core/carry/working';
import type { CarryText, JobText } from '../../../src/core/job/jobText';
import type { StairPlan } from '../../../src/core/plan/planStair';
import lumber from '../../../src/packs/lumber/lumber.json';
import { readLumber } from '../../../src/packs/lumber/readLumber';
import { LOFT, planOf } from '../../fixtures/stairs';

export const INCH = 25.4;
/** International Bureau of Weights and Measures: 0.45359237 kg at 9.80665 m/s². */
export const POUND = 0.45359237 * 9.80665;
export const PSI = POUND / INCH ** 2;

export const BOOK: LumberBook = takenBook();

function takenBook(): LumberBook {
  const reading = readLumber(lumber);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.value;
}

export const KNOWN: CarryText = { species: 'southern-pine', grade: 'no-2', service: 'dry' };

export function jobWith(carry: CarryText, job: JobText = LOFT): JobText {
  return { ...job, stairs: job.stairs.map((stair) => ({ ...stair, carry })) };
}

export function carryOf(carry: CarryText, job: JobText = LOFT): Carry {
  return screenCarry(planOf(jobWith(carry, job)), BOOK);
}

export interface Bench {
  readonly span: number;
  readonly throat: number;
  readonly spacing: number;
  readonly stringers?: number;
}

/** The plan with its stringer given this span, throat and spacing, in inches, whatever its steps. */
export function benchPlan(carry: CarryText, { span, throat, spacing, stringers = 3 }: Bench): StairPlan {
  const plan = planOf(jobWith(carry));
  const { flight, stringer, width } = plan.layout;
  if (width === null) throw new Error('the bench needs a width');
  const foot = (stringer.heel.heelX + flight.riserThickness + (stringer.kicker?.width ?? 0)) / 2;
  return {
    ...plan,
    layout: {
      ...plan.layout,
      width: { ...width, spacing: spacing * INCH, stringers, treadOverhang: 0 },
      stringer: {
        ...stringer,
        throat: throat * INCH,
        top: { ...stringer.top, endX: foot + span * INCH },
      },
    },
  };
}

export function onBench(carry: CarryText, bench: Bench): Carry {
  return screenCarry(benchPlan(carry, bench), BOOK);
}

export function resultOf({ steps }: Carry, name: StepName): number {
  const found = steps.find((step) => step.name === name);
  if (found === undefined) throw new Error(`no step ${name}`);
  return found.result;
}

export function answerTo({ answers }: Carry, check: string) {
  const found = answers.find((answer) => answer.check === check);
  if (found === undefined) throw new Error(`no answer ${check}`);
  return found;
}

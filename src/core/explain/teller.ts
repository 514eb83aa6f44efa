/**
 * Makes the terms of an explanation, each with where it came from: typed, left out, not known yet, a
 * rule's, or another measure that can be asked about in turn.
 */
import { limitFor } from '../codes/rulePack';
import type { StairJob } from '../job/stairJob';
import type { StairPlan } from '../plan/planStair';
import { invariant } from '../result';
import { type Exact, toMm } from '../units/exact';
import type { Measure, MeasureUnit, Origin, Shown, Term } from './measures';

/** One measure: its number as the layout has it, and the sum that leads there. */
export interface Entry {
  readonly unit: MeasureUnit;
  readonly shown: Shown;
  /** Null where this stair has no such number. */
  readonly result: (plan: StairPlan, step: number) => number | null;
  readonly because: (tell: Teller, step: number) => Because;
}

export interface Because {
  readonly formula: string;
  readonly terms: readonly Term[];
}

const LENGTHS = {
  markStep: (job) => job.markStep,
  'survey.rise': (job) => job.survey.rise,
  'survey.footBelowReading': (job) => job.survey.footBelowReading,
  'survey.readingFromHeader': (job) => job.survey.readingFromHeader,
  'survey.fallAlong': (job) => job.survey.fallAlong.fall,
  'survey.fallAlongOver': (job) => job.survey.fallAlong.over,
  'survey.fallAcross': (job) => job.survey.fallAcross.fall,
  'survey.fallAcrossOver': (job) => job.survey.fallAcross.over,
  'survey.lowerToAdd': (job) => job.survey.lowerToAdd.amount,
  'survey.upperToAdd': (job) => job.survey.upperToAdd.amount,
  'survey.upperSubfloor': (job) => job.survey.upperSubfloor,
  'survey.headerDepth': (job) => job.survey.headerDepth,
  'survey.floorDepth': (job) => job.survey.floorDepth,
  'survey.openingFraming': (job) => job.survey.openingFraming,
  'survey.headerLining': (job) => job.survey.headerLining,
  'survey.widthFraming': (job) => job.survey.widthFraming,
  'survey.wallboard': (job) => job.survey.wallboard,
  'survey.skirt': (job) => job.survey.skirt,
  'survey.spacer': (job) => job.survey.spacer,
  'steps.run': (job) => job.steps.run,
  'steps.nosing': (job) => job.steps.nosing,
  'steps.treadThickness': (job) => job.steps.treadThickness.amount,
  'steps.riserThickness': (job) => job.steps.riserThickness,
  'steps.upperNosingThickness': (job) => job.steps.upperNosingThickness,
  'stringer.stockDepth': (job) => job.stringer.stockDepth,
  'stringer.stockThickness': (job) => job.stringer.stockThickness,
  'stringer.tipInset': (job) => job.stringer.tipInset,
  'stringer.trim': (job) => job.stringer.trim,
  'stringer.hanger': (job) => job.stringer.hanger,
  'stringer.topTreadRun': (job) => job.stringer.topTreadRun,
  'stringer.spacingMax': (job) => job.stringer.spacingMax,
  'stringer.kicker.width': (job) => job.stringer.kicker?.width ?? null,
  'stringer.kicker.height': (job) => job.stringer.kicker?.height ?? null,
} satisfies Record<string, (job: StairJob) => Exact | null>;

export class Teller {
  constructor(
    readonly plan: StairPlan,
    private readonly resultOf: (measure: Measure) => number | null,
  ) {}

  get job(): StairJob {
    return this.plan.layout.job;
  }

  /** A length of the job; asked for only where the number explained could not be without it. */
  length(symbol: string, key: keyof typeof LENGTHS): Term {
    return { symbol, value: toMm(there(LENGTHS[key](this.job), key)), unit: 'mm', origin: this.originOf(key) };
  }

  /** A length of one of the obstacles, counted from 1; a far height that was left out is the near one. */
  ofObstacle(symbol: string, number: number, name: 'near' | 'far' | 'height' | 'heightFar'): Term {
    const obstacle = there(this.job.survey.obstacles[number - 1] ?? null, `obstacle ${number}`);
    const isSame = name === 'heightFar' && obstacle.heightFar === obstacle.height;
    const key = `survey.obstacles[${number - 1}].${isSame ? 'height' : name}`;
    return { symbol, value: toMm(obstacle[name]), unit: 'mm', origin: this.originOf(key) };
  }

  count(symbol: string, key: 'steps.risers' | 'stringer.count', value: number): Term {
    return { symbol, value, unit: 'count', origin: this.originOf(key) };
  }

  of(symbol: string, measure: Measure, unit: MeasureUnit = 'mm'): Term {
    return { symbol, value: there(this.resultOf(measure), measure), unit, origin: { from: 'measure', measure } };
  }

  rule(symbol: string, field: string): Term {
    return {
      symbol,
      value: toMm(there(limitFor(this.plan.rules, field), field)),
      unit: 'mm',
      origin: { from: 'rule', field },
    };
  }

  practice(symbol: string, value: number): Term {
    return { symbol, value, unit: 'mm', origin: { from: 'practice' } };
  }

  place(step: number): Term {
    return { symbol: 'i', value: step, unit: 'count', origin: { from: 'place' } };
  }

  private originOf(key: string): Origin {
    const { unknowns, defaults } = this.job;
    if (unknowns.includes(key)) return { from: 'unknown', key };
    return { from: defaults.some((used) => used.key === key) ? 'default' : 'job', key };
  }
}

/** A sum is only told of a number that the layout has, so all that goes into it is there. */
function there<T>(value: T | null, what: string): T {
  invariant(value !== null, `an explanation needs ${what}, which this stair does not have`);
  return value;
}

/** A number that stands somewhere else too, under another name. */
export function same(term: Term): Because {
  return { formula: 'same', terms: [term] };
}

/** A number that was chosen and not worked out. */
export function given(term: Term): Because {
  return { formula: 'given', terms: [term] };
}

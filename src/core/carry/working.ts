/**
 * The working of the screening: every number as one step with its sum, its terms and where each came from, so
 * that a reader with a pencil can follow it. Newtons and millimetres inside; a sum's own units never matter to it.
 */
import type { Confidence } from '../codes/rules';
import type { Measure } from '../explain/measures';
import type { Sourced } from './lumber';

export type CarryUnit = 'mm' | 'mm3' | 'mm4' | 'N' | 'N/mm' | 'Nmm' | 'MPa' | 'kPa' | 'factor' | 'count' | 'rad';

export const STEP_NAMES = [
  'seat',
  'span',
  'slope',
  'tributary',
  'modulus',
  'inertia',
  'liveLine',
  'deadLine',
  'line',
  'momentUniform',
  'momentPoint',
  'bendingIs',
  'bendingMay',
  'reactionUniform',
  'reactionPoint',
  'shearIs',
  'shearMay',
  'stiffness',
  'sagLiveIs',
  'sagPointIs',
  'sagLiveMay',
  'sagTotalIs',
  'sagTotalMay',
  'bearingMay',
  'footIs',
  'headNeeds',
] as const;
export type StepName = (typeof STEP_NAMES)[number];

/** What a figure of the data is: its words are the screen's affair. */
export type DataThing =
  | 'bending'
  | 'shear'
  | 'bearing'
  | 'stiffness'
  | 'duration'
  | 'wet'
  | 'size'
  | 'incised'
  | 'repetitive'
  | 'live'
  | 'point'
  | 'dead'
  | 'part';

export type CarryOrigin =
  /** A number of the layout, which can be asked why. */
  | { readonly from: 'measure'; readonly measure: Measure }
  /** Typed, or left out and at its usual size. */
  | { readonly from: 'job' | 'default'; readonly key: string }
  | {
      readonly from: 'rule';
      readonly field: string;
      readonly source: string;
      readonly section: string;
      readonly confidence: Confidence | 'local';
    }
  | ({ readonly from: 'data'; readonly what: DataThing } & Sourced)
  /** A factor that does not apply here. */
  | { readonly from: 'none'; readonly what: DataThing }
  | { readonly from: 'step'; readonly step: StepName };

export interface CarryTerm {
  readonly symbol: string;
  readonly value: number;
  readonly unit: CarryUnit;
  readonly origin: CarryOrigin;
}

export interface CarryStep {
  readonly name: StepName;
  /** Says which sum the terms go into. */
  readonly formula: string;
  readonly terms: readonly CarryTerm[];
  readonly result: number;
  readonly unit: CarryUnit;
}

/** Collects steps in the order in which they are worked. */
export class Working {
  readonly steps: CarryStep[] = [];

  /** @returns the result, for the step that comes next */
  add(name: StepName, unit: CarryUnit, terms: readonly CarryTerm[], result: number, formula: string = name): number {
    this.steps.push({ name, formula, terms, result, unit });
    return result;
  }

  /** A step before, as a term of a later one. */
  of(symbol: string, step: StepName): CarryTerm {
    const found = this.steps.find(({ name }) => name === step) as CarryStep;
    return { symbol, value: found.result, unit: found.unit, origin: { from: 'step', step } };
  }
}

/**
 * What the marks, rounded, make of the risers, held against the rules that limit it. Apart from the
 * judges of the stair itself: the page's riser strip shows one of these answers before the rest is there.
 */
import { atMost } from '../geometry/tolerance';
import type { StairLayout } from '../layout/layoutStair';
import { spreadAsCut } from '../stringer/asCut';
import { toMm } from '../units/exact';
import type { Status } from './judge';
import type { RuleSet } from './rulePack';
import type { Limit } from './rules';

export type AsCutField = 'asCut.spread' | 'asCut.adjacent' | 'asCut.nominal';

export interface AsCutAnswer {
  readonly field: AsCutField;
  readonly actualMm: number;
  /** Null: the rule gives no number. */
  readonly limitMm: number | null;
  readonly status: Status;
  readonly limit: Limit;
}

interface AsCutFigure {
  readonly field: AsCutField;
  readonly figure: (layout: StairLayout) => number;
}

const AS_CUT: Readonly<Record<string, AsCutFigure>> = {
  'variation.riser.max': { field: 'asCut.spread', figure: ({ stringer }) => spreadAsCut(stringer.feet) },
  'variation.riser.adjacent.max': { field: 'asCut.adjacent', figure: greatestStep },
  'variation.riser.nominal.max': { field: 'asCut.nominal', figure: greatestMiss },
};

/** @returns an answer for each rule about risers that differ; no tolerance is made up where a rule gives no number */
export function asCutAnswers(layout: StairLayout, rules: RuleSet): readonly AsCutAnswer[] {
  return rules.limits.flatMap((limit) => {
    const asked = Object.hasOwn(AS_CUT, limit.field) ? AS_CUT[limit.field] : undefined;
    if (asked === undefined) return [];
    const actualMm = asked.figure(layout);
    const limitMm = limit.exact === null ? null : toMm(limit.exact);
    return [{ field: asked.field, actualMm, limitMm, status: statusOf(actualMm, limitMm), limit }];
  });
}

function statusOf(actualMm: number, limitMm: number | null): Status {
  if (limitMm === null) return 'not-checked';
  return atMost(actualMm, limitMm) ? 'meets' : 'breaks';
}

function greatestStep({ stringer }: StairLayout): number {
  const steps = stringer.feet.flatMap(({ asCut: { risers } }) =>
    risers.slice(1).map((riser, i) => Math.abs(riser - (risers[i] as number))),
  );
  return Math.max(...steps);
}

function greatestMiss({ stringer, flight }: StairLayout): number {
  const misses = stringer.feet.flatMap(({ asCut }) => asCut.risers.map((riser) => Math.abs(riser - flight.unitRise)));
  return Math.max(...misses);
}

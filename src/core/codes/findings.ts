/**
 * Layout + rules → findings: facts, never exceptions. Three kinds that must not be confused:
 * against a rule, hard or unwise to build, and a matter of taste. What could not be judged stands
 * in the same list as not checked.
 */
import { atLeast } from '../geometry/tolerance';
import type { StairLayout } from '../layout/layoutStair';
import {
  add,
  compare,
  type Exact,
  fromNumber,
  inchMm,
  mmToInches,
  multiply,
  times,
  toInches,
  toMm,
} from '../units/exact';
import { asCutAnswers } from './asCut';
import { isPartOfAnother, judge, type Status } from './judge';
import { obstacleAnswers } from './obstacleAnswers';
import type { RuleSet } from './rulePack';
import type { Confidence, Replaced, RuleUnit, TasteRule } from './rules';

export { type Danger, dangerOf, sortByDanger } from './danger';

export type FindingKind = 'rule' | 'build' | 'taste';

export interface Finding {
  readonly field: string;
  readonly kind: FindingKind;
  readonly status: Status;
  readonly actual: number | null;
  readonly limit: number | boolean | string | null;
  readonly unit: RuleUnit;
  readonly section: string;
  readonly source: string;
  readonly confidence: Confidence | 'local' | 'practice';
  /** Keys of the stair whose reading would settle what is too close to call, the one that counts most first. */
  readonly readAgain: readonly string[];
  /** What the pack says where a local rule stands in its place. */
  readonly replaced: Replaced | null;
  /** How it is measured, where the pack says so; the others have a sentence for their field. */
  readonly measured?: string | undefined;
}

/**
 * Wood left at a kicker, and the share of the plumb cut that should bear on a header: common
 * practice, no source. The throat figure is the old rule of thumb that the Ontario code also sets
 * (O. Reg. 332/12, 9.8.9.4: 90 mm); others ask for 5 in.
 */
export const BUILD = { kickerLeast: inchMm(3), bearingShare: 1 / 2, throatLeast: inchMm(3.5) };

/**
 * @param doubt how far each tape reading may be out, in millimetres; null: no answer is too close to call
 * @returns every finding, rules first in the pack's order, then build, then taste
 */
export function findOn(
  layout: StairLayout,
  rules: RuleSet,
  tastes: readonly TasteRule[],
  doubt: Exact | null = null,
): readonly Finding[] {
  const byRules = ruleFindings(layout, rules, doubt);
  return [
    ...byRules.filter(({ kind }) => kind === 'rule'),
    ...overheadFindings(layout, rules, doubt),
    ...buildFindings(layout, rules),
    ...byRules.filter(({ kind }) => kind === 'taste'),
    ...tasteFindings(layout, tastes),
  ];
}

/** What a code itself calls usual, and does not ask for, is a matter of taste. */
function ruleFindings(layout: StairLayout, rules: RuleSet, doubt: Exact | null): Finding[] {
  return rules.limits
    .filter((limit) => !isPartOfAnother(limit.field, rules))
    .map((limit) => ({
      field: limit.field,
      kind: limit.advice ? 'taste' : 'rule',
      ...judge(layout, limit, rules, doubt),
      limit: limit.value,
      unit: limit.unit,
      section: limit.section,
      source: limit.source,
      confidence: limit.confidence,
      replaced: limit.replaced ?? null,
      measured: limit.measured,
    }));
}

/** Each obstacle against its own clearance, or against the headroom of the rules. */
function overheadFindings(layout: StairLayout, rules: RuleSet, doubt: Exact | null): Finding[] {
  const unit: RuleUnit = layout.job.units === 'metric' ? 'mm' : 'in';
  return obstacleAnswers(layout, rules, doubt).map(({ field, limit, judgement }) => ({
    field,
    kind: 'rule',
    ...judgement,
    limit: limit?.value ?? null,
    unit: limit?.unit ?? unit,
    section: limit?.section ?? '',
    source: limit?.source ?? '',
    confidence: limit?.confidence ?? 'practice',
    replaced: null,
  }));
}

function buildFindings(layout: StairLayout, rules: RuleSet): Finding[] {
  const { stringer } = layout;
  const { heel, kicker, bearing, top } = stringer;
  const findings = [build(layout, 'throat', stringer.throat, BUILD.throatLeast)];
  if (bearing.contact !== null) {
    findings.push(build(layout, 'headerContact', bearing.contact, top.plumbCut * BUILD.bearingShare));
  }
  if (kicker !== null) {
    const shortest = Math.min(...stringer.feet.map((foot) => foot.heel.firstRiserCut));
    findings.push(build(layout, 'kicker.toe', shortest - kicker.height, BUILD.kickerLeast));
    findings.push(build(layout, 'kicker.seat', heel.seat - kicker.width, BUILD.kickerLeast));
  }
  return [...findings, ...asCutFindings(layout, rules)];
}

/** The rounded pencil marks must not use up what the rules allow between risers. */
function asCutFindings(layout: StairLayout, rules: RuleSet): Finding[] {
  return asCutAnswers(layout, rules).map(({ field, actualMm, limitMm, status, limit }) => {
    const { section, source, confidence } = limit;
    const finding = build(layout, field, actualMm, limitMm ?? actualMm);
    return { ...finding, status, section, source, confidence, ...(limitMm === null ? { limit: limit.value } : {}) };
  });
}

/** At least the limit, in the job's own unit. */
function build(layout: StairLayout, field: string, actualMm: number, limitMm: number): Finding {
  const metric = layout.job.units === 'metric';
  return {
    field,
    kind: 'build',
    status: atLeast(actualMm, limitMm) ? 'meets' : 'breaks',
    actual: metric ? actualMm : mmToInches(actualMm),
    limit: metric ? limitMm : mmToInches(limitMm),
    unit: metric ? 'mm' : 'in',
    section: '',
    source: 'common practice, no source',
    confidence: 'practice',
    readAgain: [],
    replaced: null,
  };
}

/** Proportion rules are in inches: they are older than the metre on a building site. */
function tasteFindings(layout: StairLayout, tastes: readonly TasteRule[]): Finding[] {
  const rise = toInches(layout.flight.exact.unitRise);
  const run = toInches(layout.flight.exact.run);
  const value = {
    'taste.twoRPlusG': add(times(rise, 2), run),
    'taste.rPlusG': add(rise, run),
    'taste.rTimesG': multiply(rise, run),
  };
  return tastes.map((taste) => {
    const actual = value[taste.field];
    const tooLow = compare(actual, fromNumber(taste.low)) < 0;
    const tooHigh = compare(actual, fromNumber(taste.high)) > 0;
    return {
      field: taste.field,
      kind: 'taste',
      status: tooLow || tooHigh ? 'breaks' : 'meets',
      actual: toMm(actual),
      limit: tooLow ? taste.low : taste.high,
      unit: taste.field === 'taste.rTimesG' ? 'in2' : 'in',
      section: '',
      source: taste.source,
      confidence: taste.confidence,
      readAgain: [],
      replaced: null,
    };
  });
}

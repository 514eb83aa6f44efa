/**
 * Layout + rules → findings: facts, never exceptions. Three kinds that must not be confused:
 * against a rule, hard or unwise to build, and a matter of taste. What could not be judged stands
 * in the same list as not checked.
 */
import { atLeast, atMost } from '../geometry/tolerance';
import type { StairLayout } from '../layout/layoutStair';
import { add, compare, fromNumber, inchMm, mmToInches, multiply, times, toInches, toMm } from '../units/exact';
import { isPartOfAnother, judge, type Status } from './judge';
import type { Confidence, RuleSet, RuleUnit } from './rulePack';

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
}

/** A band that a proportion rule of the trade asks for; advice, never law. Data: src/packs. */
export interface TasteRule {
  readonly field: 'taste.twoRPlusG' | 'taste.rPlusG' | 'taste.rTimesG';
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly confidence: Confidence;
}

/**
 * Wood left at a kicker, and the share of the plumb cut that should bear on a header: common
 * practice, no source. The throat figure is the old rule of thumb that the Ontario code also sets
 * (O. Reg. 332/12, 9.8.9.4: 90 mm); others ask for 5 in.
 */
const BUILD = { kickerLeast: inchMm(3), bearingShare: 1 / 2, throatLeast: inchMm(3.5) };

/** @returns every finding, rules first in the pack's order, then build, then taste */
export function findOn(layout: StairLayout, rules: RuleSet, tastes: readonly TasteRule[]): readonly Finding[] {
  return [...ruleFindings(layout, rules), ...buildFindings(layout, rules), ...tasteFindings(layout, tastes)];
}

function ruleFindings(layout: StairLayout, rules: RuleSet): Finding[] {
  return rules.limits
    .filter((limit) => !isPartOfAnother(limit.field))
    .map(({ field, value, unit, section, source, confidence, ...limit }) => ({
      field,
      kind: 'rule',
      ...judge(layout, { field, value, unit, section, source, confidence, ...limit }, rules),
      limit: value,
      unit,
      section,
      source,
      confidence,
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
    findings.push(build(layout, 'kicker.toe', heel.firstRiserCut - kicker.height, BUILD.kickerLeast));
    findings.push(build(layout, 'kicker.seat', heel.seat - kicker.width, BUILD.kickerLeast));
  }
  return [...findings, ...asCutFinding(layout, rules)];
}

/** The rounded pencil marks must not use up what the rules allow between risers. */
function asCutFinding(layout: StairLayout, rules: RuleSet): Finding[] {
  const limit = rules.limits.find(({ field }) => field === 'variation.riser.max');
  if (!limit?.exact) return [];
  const { spread } = layout.stringer.asCut;
  const status = atMost(spread, toMm(limit.exact)) ? 'meets' : 'breaks';
  const finding = build(layout, 'asCut.spread', spread, toMm(limit.exact));
  return [{ ...finding, status, section: limit.section, source: limit.source, confidence: limit.confidence }];
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
    };
  });
}

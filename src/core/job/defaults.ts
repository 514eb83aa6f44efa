/**
 * What is used for a key that was left out. Common practice, no source: usual stock sizes and
 * thicknesses in each system, shown to the user as used, never passed off as measured.
 */
import type { UnitSystem } from '../units/length';

export type DefaultKey =
  | 'markStep'
  | 'survey.footBelowReading'
  | 'survey.fallAlong'
  | 'survey.fallAlongOver'
  | 'survey.fallAcross'
  | 'survey.fallAcrossOver'
  | 'survey.upperSubfloor'
  | 'survey.headerLining'
  | 'survey.wallboard'
  | 'survey.skirt'
  | 'survey.spacer'
  | 'steps.nosing'
  | 'steps.treadThickness'
  | 'steps.riserThickness'
  | 'steps.upperNosingThickness'
  | 'stringer.stockDepth'
  | 'stringer.stockThickness'
  | 'stringer.tipInset'
  | 'stringer.trim'
  | 'stringer.hanger'
  | 'stringer.spacingMax';

const IMPERIAL: Readonly<Record<DefaultKey, string>> = {
  markStep: '1/16 in',
  'survey.footBelowReading': '0 in',
  'survey.fallAlong': '0 in',
  'survey.fallAlongOver': '48 in',
  'survey.fallAcross': '0 in',
  'survey.fallAcrossOver': '48 in',
  'survey.upperSubfloor': '3/4 in',
  'survey.headerLining': '1/2 in',
  'survey.wallboard': '1/2 in',
  'survey.skirt': '3/4 in',
  'survey.spacer': '1 1/2 in',
  'steps.nosing': '1 in',
  'steps.treadThickness': '1 in',
  'steps.riserThickness': '3/4 in',
  'steps.upperNosingThickness': '3/4 in',
  'stringer.stockDepth': '11 1/4 in',
  'stringer.stockThickness': '1 1/2 in',
  'stringer.tipInset': '0 in',
  'stringer.trim': '2 in',
  'stringer.hanger': '3/4 in',
  'stringer.spacingMax': '16 in',
};

const METRIC: Readonly<Record<DefaultKey, string>> = {
  markStep: '0.5 mm',
  'survey.footBelowReading': '0 mm',
  'survey.fallAlong': '0 mm',
  'survey.fallAlongOver': '1200 mm',
  'survey.fallAcross': '0 mm',
  'survey.fallAcrossOver': '1200 mm',
  'survey.upperSubfloor': '22 mm',
  'survey.headerLining': '12.5 mm',
  'survey.wallboard': '12.5 mm',
  'survey.skirt': '18 mm',
  'survey.spacer': '38 mm',
  'steps.nosing': '20 mm',
  'steps.treadThickness': '25 mm',
  'steps.riserThickness': '18 mm',
  'steps.upperNosingThickness': '18 mm',
  'stringer.stockDepth': '290 mm',
  'stringer.stockThickness': '45 mm',
  'stringer.tipInset': '0 mm',
  'stringer.trim': '50 mm',
  'stringer.hanger': '18 mm',
  'stringer.spacingMax': '400 mm',
};

/** @returns the text of the length that is used where the key was left out */
export function defaultText(key: DefaultKey, units: UnitSystem): string {
  return (units === 'metric' ? METRIC : IMPERIAL)[key];
}

/** Nothing: a finish or hanger that is not there, in the words of the job's own unit. */
export function nothingText(units: UnitSystem): string {
  return units === 'metric' ? '0 mm' : '0 in';
}

/**
 * What lights up on a drawing while a key of the form is in hand: the marks that are about it, and
 * those of the numbers that it sets alone. A key that is in no picture lights what it changes first.
 */
import type { About } from './drawing';

const ALSO: Readonly<Record<string, readonly About[]>> = {
  'survey.footBelowReading': ['survey.rise'],
  'survey.lowerLaid': ['survey.lowerToAdd'],
  'steps.risers': ['risers', 'unitRise'],
  'steps.run': ['run'],
  unitRise: ['steps.riserThickness'],
  run: ['steps.treadThickness'],
  twoRisePlusRun: ['unitRise', 'run', 'pitch'],
  risers: ['unitRise', 'steps.riserThickness'],
  headerContact: ['stringer.hanger', 'headerFace'],
  'steps.joint': ['steps.treadThickness', 'steps.riserThickness'],
  'stringer.kicker.width': ['stringer.kicker'],
  'stringer.kicker.height': ['stringer.kicker'],
  'stringer.stockThickness': ['stringer.stockDepth'],
  'stringer.tipInset': ['gaugeLine', 'notchDepth'],
  'stringer.trim': ['stringer.stockDepth'],
  'stringer.top': ['stringer.hanger', 'headerMark', 'plumbCut'],
  'stringer.topTreadRun': ['lastLevelCut', 'headerFace'],
};

/** @returns whether a mark belongs to what is in hand; null when nothing is */
export function isLitBy(lit: About | null, about: About | undefined): boolean {
  if (lit === null || about === undefined) return false;
  return about === lit || (ALSO[lit]?.includes(about) ?? false);
}

/** Lengths that look like a slip of the tape or of the unit: said, never forbidden. */
import { inchMm, toMm } from '../../core/units/exact';
import { parseLength } from '../../core/units/length';

/** In inches, ends included. Common practice, no source: outside of it a second look is worth while. */
const USUAL: Readonly<Record<string, readonly [least: number, most: number]>> = {
  'survey.rise': [14, 240],
  'survey.lowerToAdd': [-2, 2.5],
  'survey.upperToAdd': [-2, 2.5],
  'steps.treadThickness': [0.5, 3],
  'survey.footBelowReading': [-6, 6],
  'survey.readingFromHeader': [0, 300],
  'survey.fallAlong': [-6, 6],
  'survey.fallAlongOver': [6, 300],
  'survey.fallAcross': [-4, 4],
  'survey.fallAcrossOver': [6, 300],
  'survey.openingFraming': [24, 360],
  'survey.headerLining': [0, 3],
  'survey.headerDepth': [3.5, 24],
  'survey.upperSubfloor': [0.25, 3],
  'survey.floorDepth': [5, 36],
  'survey.widthFraming': [24, 120],
  'survey.wallboard': [0, 2],
  'survey.skirt': [0, 2.5],
  'survey.spacer': [0, 6],
};

/** @param text the length with its unit; what does not read is for others to say */
export function isOdd(key: string, text: string): boolean {
  const usual = USUAL[key];
  const reading = parseLength(text, true);
  if (usual === undefined || !reading.ok) return false;
  const mm = toMm(reading.length);
  return mm < inchMm(usual[0]) || mm > inchMm(usual[1]);
}

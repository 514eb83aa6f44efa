/** What is measured, in the order of the job, and whether it has been. */
import type { JobText } from '../../core/job/jobText';
import { placeInStair, valueAt } from '../fields/jobPlaces';
import { finishParts, textOf } from '../fields/makings';
import type { FieldKind } from '../form/formParts';

export type ThingName = 'rise' | 'finishes' | 'landing' | 'opening' | 'header' | 'depth' | 'overhead' | 'widths';

export interface Thing {
  readonly name: ThingName;
  readonly fields: readonly (readonly [key: string, kind: FieldKind])[];
  /** The keys without which it counts as missing; the others have a usual value. */
  readonly asked: readonly string[];
  /** A key that answers the same in another way. */
  readonly or?: string;
}

export const THINGS: readonly Thing[] = [
  { name: 'rise', fields: [['survey.rise', 'feet-required']], asked: ['survey.rise'] },
  {
    name: 'finishes',
    fields: [
      ['survey.lowerToAdd', 'finish'],
      ['survey.upperToAdd', 'finish'],
      ['steps.treadThickness', 'finish'],
      ['survey.lowerLaid', 'laid'],
    ],
    asked: ['survey.lowerToAdd', 'survey.upperToAdd', 'steps.treadThickness'],
  },
  {
    name: 'landing',
    fields: [
      ['survey.footBelowReading', 'length'],
      ['survey.readingFromHeader', 'length'],
      ['survey.fallAlong', 'length'],
      ['survey.fallAlongOver', 'length'],
      ['survey.fallAcross', 'length'],
      ['survey.fallAcrossOver', 'length'],
    ],
    asked: ['survey.footBelowReading'],
    or: 'survey.readingFromHeader',
  },
  {
    name: 'opening',
    fields: [
      ['survey.openingFraming', 'feet'],
      ['survey.headerLining', 'length'],
    ],
    asked: ['survey.openingFraming'],
  },
  {
    name: 'header',
    fields: [
      ['survey.headerDepth', 'length'],
      ['survey.upperSubfloor', 'length'],
    ],
    asked: ['survey.headerDepth'],
  },
  { name: 'depth', fields: [['survey.floorDepth', 'length']], asked: ['survey.floorDepth'] },
  // Each has fields of its own; most stairs have none.
  { name: 'overhead', fields: [], asked: [] },
  {
    name: 'widths',
    fields: [
      ['survey.widthFraming', 'feet'],
      ['survey.wallboard', 'length'],
      ['survey.skirt', 'length'],
      ['survey.spacer', 'length'],
    ],
    asked: ['survey.widthFraming'],
  },
];

export type ThingState = 'missing' | 'unknown' | 'done';

export function stateOfKey(job: JobText, index: number, key: string): ThingState {
  const value = valueAt(job, placeInStair(index, key));
  if (value === undefined || value === '') return 'missing';
  return value === 'unknown' ? 'unknown' : 'done';
}

/** What it counts by: the other way where only that was gone. */
export function askedOf(job: JobText, index: number, { asked, or }: Thing): readonly string[] {
  const isMissing = asked.every((key) => stateOfKey(job, index, key) === 'missing');
  return or !== undefined && isMissing && stateOfKey(job, index, or) === 'done' ? [or] : asked;
}

/** The worst of what it asks for. */
export function stateOfThing(job: JobText, index: number, thing: Thing): ThingState {
  const states = askedOf(job, index, thing).map((key) => stateOfKey(job, index, key));
  return states.find((state) => state === 'missing') ?? states.find((state) => state === 'unknown') ?? 'done';
}

/** The length that a key holds, as text with its unit; empty where there is none. */
export function lengthAt(job: JobText, index: number, key: string): string {
  const value = valueAt(job, placeInStair(index, key));
  return typeof value === 'object' || value === 'unknown' ? finishParts(value).text : textOf(value);
}

/**
 * What the wood may bear: the reference values of its species, grade and size, and the factors on them, as data.
 * Where the data has no such wood there is no value, and the reason is given: nothing near it is taken instead.
 */
import { atLeast, atMost } from '../geometry/tolerance';
import type { StairLayout } from '../layout/layoutStair';
import { inchMm, mmToInches } from '../units/exact';
import { psiToMpa } from '../units/load';
import type {
  DressedSize,
  DurationFactor,
  LumberBook,
  PropertyFactor,
  Sourced,
  WoodProperty,
  WoodValues,
} from './lumber';
import type { CarryTerm, DataThing } from './working';

/** Why nothing is claimed for the wood. */
export type WoodGap =
  | 'species.notSaid'
  | 'species.unknown'
  | 'grade.notSaid'
  | 'grade.unknown'
  | 'service.notSaid'
  | 'depth.unknown'
  | 'depth.noValues'
  | 'thickness.unknown';

export interface Wood {
  readonly values: WoodValues;
  readonly size: DressedSize;
}

/** A board as measured is the dressed size that it is this near to: lumber is sold green, dry and shrunk. Our own reading. */
const SIZE_PLAY = inchMm(1 / 4);
const THICKNESS_PLAY = inchMm(1 / 16);

export function woodOf({ job, stringer }: StairLayout, book: LumberBook): Wood | WoodGap {
  const { species, grade, service } = job.carry;
  if (species === null) return 'species.notSaid';
  const ofSpecies = book.values.filter((values) => values.species === species);
  if (ofSpecies.length === 0) return 'species.unknown';
  if (grade === null) return 'grade.notSaid';
  const ofGrade = ofSpecies.filter(({ grades }) => grades.includes(grade));
  if (ofGrade.length === 0) return 'grade.unknown';
  if (service === null) return 'service.notSaid';
  const { least, most } = book.thickness;
  const isThick = atLeast(stringer.stockThickness, inchMm(least) - THICKNESS_PLAY);
  if (!isThick || !atMost(stringer.stockThickness, inchMm(most) + THICKNESS_PLAY)) return 'thickness.unknown';
  const size = book.sizes.find(({ depth }) => atMost(Math.abs(stringer.stockDepth - inchMm(depth)), SIZE_PLAY));
  if (size === undefined) return 'depth.unknown';
  const values = ofGrade.find(({ nominal }) => nominal === undefined || nominal === size.nominal);
  return values === undefined ? 'depth.noValues' : { values, size };
}

/** The names that the data has, in its order, for a list to choose from. */
export function speciesIn(book: LumberBook): readonly string[] {
  return [...new Set(book.values.map(({ species }) => species))];
}

export function gradesIn(book: LumberBook, species: string | null): readonly string[] {
  const values = book.values.filter((each) => species === null || each.species === species);
  return [...new Set(values.flatMap(({ grades }) => grades))].sort();
}

/** The reference value as a term, in newtons on a square millimetre. */
export function valueTerm(symbol: string, what: WoodProperty, { values }: Wood): CarryTerm {
  const { confidence, sources } = values;
  return { symbol, value: psiToMpa(values[what]), unit: 'MPa', origin: { from: 'data', what, confidence, sources } };
}

/** Factors that a property has in this stair, each a term; 1 with no source where one does not apply. */
export function factorTerms(
  what: WoodProperty,
  wood: Wood,
  { job, width }: StairLayout,
  book: LumberBook,
): readonly CarryTerm[] {
  const wet = () => wetTerm(what, wood, job.carry.service === 'wet', book);
  const incised = () => incisedTerm(what, isIncised(job.carry), book);
  if (what === 'stiffness' || what === 'bearing') return [wet(), incised()];
  const asked = job.carry.duration ?? 'occupancy';
  const row = book.duration.find(({ name }) => name === asked) as DurationFactor;
  const duration = factorTerm('CD', 'duration', row.factor, row);
  if (what === 'shear') return [duration, wet(), incised()];
  const share = book.repetitive;
  const isShared = width !== null && width.stringers >= share.least && atMost(mmToInches(width.spacing), share.spacing);
  return [
    duration,
    wet(),
    sizeTerm(wood, book),
    incised(),
    isShared ? factorTerm('Cr', 'repetitive', share.factor, share) : noFactor('Cr', 'repetitive'),
  ];
}

/** Treated wood in the wet is usually incised: where nobody says, the weaker of the two is taken. */
export function isIncised({ treatment, service }: StairLayout['job']['carry']): boolean {
  return treatment === null ? service === 'wet' : treatment === 'incised';
}

/** Lowers only what is over the figure up to which wet wood is as good as dry. */
function wetTerm(what: WoodProperty, { values, size }: Wood, isWet: boolean, book: LumberBook): CarryTerm {
  const row = book.wet.find(({ on }) => on === what) as PropertyFactor;
  const whole = values.nominal === undefined ? values[what] * sizeFactor(size, book).factor : values[what];
  const isFree = row.freeUpTo !== undefined && whole <= row.freeUpTo;
  return isWet ? factorTerm('CM', 'wet', isFree ? 1 : row.factor, row) : noFactor('CM', 'wet');
}

function incisedTerm(what: WoodProperty, applies: boolean, book: LumberBook): CarryTerm {
  const row = book.incised.find(({ on }) => on === what) as PropertyFactor;
  return applies ? factorTerm('Ci', 'incised', row.factor, row) : noFactor('Ci', 'incised');
}

/** By the board's own depth and not by the throat's: the grade was given to the whole board. */
function sizeTerm({ values, size }: Wood, book: LumberBook): CarryTerm {
  if (values.nominal !== undefined) return noFactor('CF', 'size');
  const row = sizeFactor(size, book);
  return factorTerm('CF', 'size', row.factor, row);
}

function sizeFactor({ nominal }: DressedSize, { sizeFactors }: LumberBook): LumberBook['sizeFactors'][number] {
  return sizeFactors.find((row) => row.nominal === nominal) as LumberBook['sizeFactors'][number];
}

function factorTerm(symbol: string, what: DataThing, value: number, { confidence, sources }: Sourced): CarryTerm {
  return { symbol, value, unit: 'factor', origin: { from: 'data', what, confidence, sources } };
}

function noFactor(symbol: string, what: DataThing): CarryTerm {
  return { symbol, value: 1, unit: 'factor', origin: { from: 'none', what } };
}

/**
 * Any stair that a person could write. Every length is a whole number of nanometres, which holds
 * each 1/64 in and each 0.001 mm, and is written in one of the notations that a job file accepts.
 */
import fc from 'fast-check';
import type { JobText, StringerTop, TreadRiserJoint } from '../../src/core/job/jobText';

export const NM = 1_000_000;
const NM_PER_SIXTY_FOURTH = 396_875;

const TOPS = ['header-behind-riser', 'hanger-is-riser', 'hanger-behind-riser', 'level-with-floor'] as const;
const JOINTS = ['tread-butts-riser', 'riser-on-tread'] as const;

/** Nanometres, every one of them. */
export interface Lengths {
  readonly rise: number;
  readonly foot: number;
  readonly lower: number;
  readonly upper: number;
  readonly subfloor: number;
  readonly headerDepth: number;
  readonly floorDepth: number;
  readonly opening: number;
  readonly lining: number;
  readonly width: number;
  readonly wallboard: number;
  readonly skirt: number;
  readonly spacer: number;
  readonly run: number;
  readonly nosing: number;
  readonly tread: number;
  readonly riser: number;
  readonly upperNosing: number;
  readonly depth: number;
  readonly thickness: number;
  readonly inset: number;
  readonly trim: number;
  readonly hanger: number;
  readonly topTread: number;
  readonly kickerWidth: number;
  readonly kickerHeight: number;
  readonly spacingMax: number;
  readonly markStep: number;
}

/** A floor that is not level; nanometres. `from`: where the tape stood out from the header, or where it lands. */
export interface RandomSlope {
  readonly along: number;
  readonly alongOver: number;
  readonly across: number;
  readonly acrossOver: number;
  readonly from: number | null;
}

export interface RandomStair {
  /** Left out: level. */
  readonly slope?: RandomSlope;
  readonly units: 'imperial' | 'metric';
  readonly risers: number;
  readonly laidAfter: boolean;
  readonly joint: TreadRiserJoint;
  readonly top: StringerTop;
  readonly kicker: boolean;
  readonly nm: Lengths;
  /** Which notation comes first; the others follow in turn. */
  readonly notation: number;
}

const MARK_STEPS = [32, 16, 8, 4, 2, 1]
  .map((sixtyFourths) => sixtyFourths * NM_PER_SIXTY_FOURTH)
  .concat([NM / 2, NM, 5 * NM]);

/** Proportions that leave a stringer most of the time; the rest is for the refusals. */
const proportions = fc.record({
  risers: fc.oneof({ weight: 8, arbitrary: fc.integer({ min: 3, max: 22 }) }, fc.integer({ min: 2, max: 60 })),
  // Steep and shallow ones too: no law forbids a ship's ladder or a garden step.
  unitRise: fc.oneof({ weight: 6, arbitrary: fc.integer({ min: 90, max: 240 }) }, fc.integer({ min: 40, max: 450 })),
  run: fc.oneof({ weight: 6, arbitrary: fc.integer({ min: 190, max: 420 }) }, fc.integer({ min: 100, max: 700 })),
  lower: fc.integer({ min: -35, max: 45 }),
  upper: fc.integer({ min: -35, max: 45 }),
  foot: fc.integer({ min: -60, max: 60 }),
  tread: fc.integer({ min: 12, max: 60 }),
  nosing: fc.integer({ min: 0, max: 45 }),
  riser: fc.oneof({ weight: 4, arbitrary: fc.integer({ min: 6, max: 40 }) }, fc.constant(0)),
  throat: fc.integer({ min: 40, max: 200 }),
  inset: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 12 })),
  hanger: fc.integer({ min: 0, max: 50 }),
  topTreadShare: fc.integer({ min: 5, max: 100 }),
  kickerWidth: fc.integer({ min: 20, max: 120 }),
  kickerHeight: fc.integer({ min: 10, max: 60 }),
  // Moves every length off its round millimetre, by nanometres.
  crumbs: fc.integer({ min: 0, max: 999_999 }),
});

const around = fc.record({
  subfloor: fc.integer({ min: 15, max: 30 }),
  headerDepth: fc.integer({ min: 90, max: 450 }),
  floorDepth: fc.integer({ min: 150, max: 500 }),
  opening: fc.integer({ min: 1500, max: 5000 }),
  lining: fc.integer({ min: 0, max: 30 }),
  width: fc.integer({ min: 700, max: 2000 }),
  wallboard: fc.integer({ min: 0, max: 25 }),
  skirt: fc.integer({ min: 0, max: 25 }),
  spacer: fc.integer({ min: 0, max: 60 }),
  upperNosing: fc.integer({ min: 12, max: 40 }),
  thickness: fc.integer({ min: 30, max: 60 }),
  trim: fc.integer({ min: 0, max: 100 }),
  spacingMax: fc.integer({ min: 200, max: 700 }),
});

export const randomStair: fc.Arbitrary<RandomStair> = fc
  .record({
    units: fc.constantFrom('imperial' as const, 'metric' as const),
    laidAfter: fc.boolean(),
    joint: fc.constantFrom(...JOINTS),
    top: fc.constantFrom(...TOPS),
    kicker: fc.boolean(),
    notation: fc.nat({ max: 999 }),
    markStep: fc.constantFrom(...MARK_STEPS),
    proportions,
    around,
  })
  .map(({ proportions: p, around: a, markStep, ...choices }) => {
    const onGrid = (mm: number, turn: number): number => {
      const nm = mm === 0 ? 0 : mm * NM + ((p.crumbs * (turn + 1)) % NM);
      return choices.units === 'imperial' ? Math.round(nm / NM_PER_SIXTY_FOURTH) * NM_PER_SIXTY_FOURTH : nm;
    };
    const notch = (p.unitRise * p.run) / Math.hypot(p.unitRise, p.run);
    const millimetres: Record<Exclude<keyof Lengths, 'markStep' | 'topTread'>, number> = {
      rise: p.risers * p.unitRise - p.foot - p.upper + p.lower,
      foot: p.foot,
      lower: p.lower,
      upper: p.upper,
      run: p.run,
      nosing: p.nosing,
      tread: p.tread,
      riser: p.riser,
      depth: Math.round(p.inset + notch + p.throat),
      inset: p.inset,
      hanger: choices.top === 'header-behind-riser' ? 0 : p.hanger,
      kickerWidth: p.kickerWidth,
      kickerHeight: p.kickerHeight,
      ...a,
    };
    const keys = Object.keys(millimetres) as (keyof typeof millimetres)[];
    const nm = Object.fromEntries(keys.map((key, turn) => [key, onGrid(millimetres[key], turn)])) as unknown as Lengths;
    const topTread = Math.min(nm.run, onGrid(Math.max(1, Math.floor((p.run * p.topTreadShare) / 100)), 7));
    return { ...choices, risers: p.risers, nm: { ...nm, markStep, topTread } };
  })
  // A reading of a rise is a length up; a floor that lies lower than all of it has none.
  .filter(({ nm }) => nm.rise > 0);

const slope: fc.Arbitrary<RandomSlope> = fc
  .record({
    along: fc.oneof({ weight: 6, arbitrary: fc.integer({ min: -90, max: 90 }) }, fc.integer({ min: -900, max: 900 })),
    alongOver: fc.integer({ min: 300, max: 2400 }),
    across: fc.oneof({ weight: 6, arbitrary: fc.integer({ min: -40, max: 40 }) }, fc.integer({ min: -400, max: 400 })),
    acrossOver: fc.integer({ min: 300, max: 2000 }),
    from: fc.option(fc.integer({ min: 0, max: 6000 }), { nil: null, freq: 3 }),
  })
  .map((mm) => ({
    along: mm.along * NM,
    alongOver: mm.alongOver * NM,
    across: mm.across * NM,
    acrossOver: mm.acrossOver * NM,
    from: mm.from === null ? null : mm.from * NM,
  }));

/** The same stairs on floors that fall every way; where the slope says how much lower the foot is, no reading does. */
export const slopedStair: fc.Arbitrary<RandomStair> = fc.tuple(randomStair, slope).map(([stair, on]) => {
  const foot = on.from !== null && on.along !== 0 ? 0 : stair.nm.foot;
  return { ...stair, slope: on, nm: { ...stair.nm, foot } };
});

function slopeText(on: RandomSlope, text: (length: number) => string) {
  return {
    fallAlong: text(on.along),
    fallAlongOver: text(on.alongOver),
    fallAcross: text(on.across),
    fallAcrossOver: text(on.acrossOver),
    ...(on.from === null ? {} : { readingFromHeader: text(on.from) }),
  };
}

/** The job text of a stair, every key written out. */
export function jobOf(stair: RandomStair): JobText {
  const { nm } = stair;
  let turn = stair.notation;
  const text = (length: number): string => writeLength(length, turn++);
  return {
    format: 'pitchboard.job',
    version: 1,
    units: stair.units,
    markStep: text(nm.markStep),
    rules: { pack: 'irc-2021' },
    stairs: [
      {
        id: 'any',
        survey: {
          rise: text(nm.rise),
          footBelowReading: text(nm.foot),
          ...(stair.slope === undefined ? {} : slopeText(stair.slope, text)),
          lowerToAdd: text(nm.lower),
          lowerLaid: stair.laidAfter ? 'after-stairs' : 'before-stairs',
          upperToAdd: text(nm.upper),
          upperSubfloor: text(nm.subfloor),
          headerDepth: text(nm.headerDepth),
          floorDepth: text(nm.floorDepth),
          openingFraming: text(nm.opening),
          headerLining: text(nm.lining),
          widthFraming: text(nm.width),
          wallboard: text(nm.wallboard),
          skirt: text(nm.skirt),
          spacer: text(nm.spacer),
        },
        steps: {
          risers: stair.risers,
          run: text(nm.run),
          nosing: text(nm.nosing),
          treadThickness: text(nm.tread),
          riserThickness: text(nm.riser),
          joint: stair.joint,
          upperNosingThickness: text(nm.upperNosing),
        },
        stringer: {
          stockDepth: text(nm.depth),
          stockThickness: text(nm.thickness),
          tipInset: text(nm.inset),
          trim: text(nm.trim),
          top: stair.top,
          hanger: text(nm.hanger),
          ...(stair.top === 'level-with-floor' ? { topTreadRun: text(nm.topTread) } : {}),
          ...(stair.kicker ? { kicker: { width: text(nm.kickerWidth), height: text(nm.kickerHeight) } } : {}),
          spacingMax: text(nm.spacingMax),
        },
      },
    ],
  };
}

/** @param turn picks the notation; inches are only used where they are exact */
export function writeLength(nm: number, turn: number): string {
  const size = Math.abs(nm);
  const text =
    nm % NM_PER_SIXTY_FOURTH === 0 && turn % 3 !== 0
      ? inInches(size / NM_PER_SIXTY_FOURTH, turn)
      : inMetric(size, turn);
  return nm < 0 ? `-${text}` : text;
}

function inMetric(nm: number, turn: number): string {
  const decimals = (places: number) => {
    const digits = String(nm).padStart(places + 1, '0');
    const rest = digits.slice(-places).replace(/0+$/, '');
    return `${digits.slice(0, -places)}${rest === '' ? '' : '.'}${rest}`;
  };
  return [`${decimals(6)} mm`, `${decimals(7)} cm`, `${decimals(9)} m`, `${decimals(6)}mm`][turn % 4] as string;
}

function inInches(sixtyFourths: number, turn: number): string {
  const whole = Math.floor(sixtyFourths / 64);
  const part = fractionOf(sixtyFourths % 64);
  const tape = (inches: number, joint: string) =>
    part === '' ? String(inches) : inches === 0 ? part : `${inches}${joint}${part}`;
  const feet = Math.floor(whole / 12);
  return [
    `${tape(whole, ' ')} in`,
    `${tape(whole, '-')}"`,
    `${sixtyFourths / 64} in`,
    `${feet}' ${tape(whole % 12, ' ')}"`,
    `${feet} ft ${tape(whole % 12, '-')} in`,
    `${tape(whole, ' ')}″`,
    `${feet}'-${tape(whole % 12, '-')}"`,
  ][turn % 7] as string;
}

function fractionOf(sixtyFourths: number): string {
  if (sixtyFourths === 0) return '';
  let [top, bottom] = [sixtyFourths, 64];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}

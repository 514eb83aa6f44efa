/**
 * JobText → StairJob: every length read exactly, every left-out key filled and listed.
 * Only what can be told from one key alone is refused here; what needs the geometry is
 * refused by the layout.
 */
import { failure, type Problem, problem, type Result, success } from '../result';
import { compare, inch, toMm } from '../units/exact';
import type { UnitSystem } from '../units/length';
import { nothingText } from './defaults';
import { FieldReader } from './fieldReader';
import type {
  CarryText,
  JobText,
  ObstacleText,
  SoftCoveringText,
  StairText,
  StringerText,
  StringerTop,
} from './jobText';
import {
  type CarryChoice,
  hasHangerBoard,
  type Obstacle,
  type StairJob,
  type Steps,
  type StringerChoice,
  type Survey,
} from './stairJob';

const FEWEST_RISERS = 2;
const MOST_RISERS = 200;
const FEWEST_STRINGERS = 2;
const MOST_STRINGERS = 100;
/** Coarser than this no pencil marks a stair: a rounded notch would no longer be one. */
const COARSEST_STEP = inch(1 / 2);
/** A tape that is out by more than this is read again, and nothing is judged by it. */
const MOST_DOUBT = inch(1 / 2);

/**
 * @param job the whole text, for its units and mark step
 * @param index which stair
 * @returns the stair in exact millimetres, or every key that could not be read
 */
export function readStair(job: JobText, index: number): Result<StairJob> {
  const text = job.stairs[index] as StairText;
  const units = job.units ?? 'imperial';
  const reader = new FieldReader(`stairs[${index}]`, units);
  const whole = new FieldReader('job', units);
  const markStep = whole.lengthOrDefault('markStep', job.markStep, { aboveZero: true });
  if (compare(markStep, COARSEST_STEP) > 0) {
    whole.problems.push(problem('job.markStep', 'markStep.tooCoarse', { mostMm: toMm(COARSEST_STEP) }));
  }
  const tapeDoubt = whole.lengthOrNone('tapeDoubt', job.tapeDoubt);
  if (tapeDoubt !== null && compare(tapeDoubt, MOST_DOUBT) > 0) {
    whole.problems.push(problem('job.tapeDoubt', 'tapeDoubt.tooMuch', { mostMm: toMm(MOST_DOUBT) }));
  }
  if (job.units === undefined) reader.defaults.push({ key: 'units', used: units });
  reader.defaults.push(...whole.defaults);
  const survey = readSurvey(reader, text);
  const steps = readSteps(reader, text);
  const stringer = readStringer(reader, text.stringer ?? {}, units);
  const carry = readCarry(reader, text.carry ?? {});
  const problems: Problem[] = [...atTopLevel(whole.problems), ...reader.problems];
  if (problems.length > 0) return failure(problems);
  return success({
    id: text.id,
    name: text.name ?? text.id,
    place: reader.place,
    units,
    markStep,
    tapeDoubt,
    survey,
    steps,
    stringer,
    carry,
    unknowns: reader.unknowns,
    defaults: reader.defaults,
  });
}

function atTopLevel(problems: readonly Problem[]): Problem[] {
  return problems.map((found) => ({ ...found, place: found.place.replace(/^job\./, '') }));
}

function readSurvey(reader: FieldReader, { survey }: StairText): Survey {
  const isLevel = survey.fallAlong === undefined && survey.fallAcross === undefined;
  return {
    rise: reader.length('survey.rise', survey.rise),
    footBelowReading: reader.lengthOrDefault('survey.footBelowReading', survey.footBelowReading, {
      mayBeNegative: true,
    }),
    readingFromHeader: reader.lengthOrNone('survey.readingFromHeader', survey.readingFromHeader),
    fallAlong: reader.fall('survey.fallAlong', { fall: survey.fallAlong, over: survey.fallAlongOver }, isLevel),
    fallAcross: reader.fall('survey.fallAcross', { fall: survey.fallAcross, over: survey.fallAcrossOver }, isLevel),
    lowerToAdd: reader.finish('survey.lowerToAdd', survey.lowerToAdd, { mayBeNegative: true }),
    lowerLaid: reader.choice('survey.lowerLaid', survey.lowerLaid, 'after-stairs'),
    upperToAdd: reader.finish('survey.upperToAdd', survey.upperToAdd, { mayBeNegative: true }),
    upperSubfloor: reader.lengthOrDefault('survey.upperSubfloor', survey.upperSubfloor),
    headerDepth: reader.lengthOrNone('survey.headerDepth', survey.headerDepth),
    floorDepth: reader.lengthOrNone('survey.floorDepth', survey.floorDepth),
    obstacles: (survey.obstacles ?? []).map((text, at) => readObstacle(reader, text, at)),
    openingFraming: reader.lengthOrNone('survey.openingFraming', survey.openingFraming),
    headerLining: reader.lengthOrDefault('survey.headerLining', survey.headerLining),
    widthFraming: reader.lengthOrNone('survey.widthFraming', survey.widthFraming),
    wallboard: reader.lengthOrDefault('survey.wallboard', survey.wallboard),
    skirt: reader.lengthOrDefault('survey.skirt', survey.skirt),
    spacer: reader.lengthOrDefault('survey.spacer', survey.spacer),
  };
}

function readObstacle(reader: FieldReader, text: ObstacleText, at: number): Obstacle {
  const key = (name: string) => `survey.obstacles[${at}].${name}`;
  const near = reader.length(key('near'), text.near);
  const far = reader.length(key('far'), text.far);
  const height = reader.length(key('height'), text.height, { aboveZero: true });
  const heightFar =
    text.heightFar === undefined ? height : reader.length(key('heightFar'), text.heightFar, { aboveZero: true });
  if (compare(far, near) < 0) {
    reader.problems.push(problem(`${reader.place}.${key('far')}`, 'obstacle.order', { nearMm: toMm(near) }));
  }
  return {
    name: text.name ?? '',
    near,
    far,
    height,
    heightFar,
    clearance:
      text.clearance === undefined ? null : reader.length(key('clearance'), text.clearance, { aboveZero: true }),
  };
}

function readSteps(reader: FieldReader, { steps = {} }: StairText): Steps {
  readSoftCovering(reader, steps.softCovering ?? {});
  return {
    risers: reader.count('steps.risers', steps.risers, FEWEST_RISERS, MOST_RISERS),
    run: reader.lengthOrNone('steps.run', steps.run),
    nosing: reader.lengthOrDefault('steps.nosing', steps.nosing),
    treadThickness: reader.treadThickness(steps.treadThickness),
    riserThickness: reader.lengthOrDefault('steps.riserThickness', steps.riserThickness),
    joint: reader.choice('steps.joint', steps.joint, 'tread-butts-riser'),
    upperNosingThickness: reader.lengthOrDefault('steps.upperNosingThickness', steps.upperNosingThickness),
  };
}

/** Soft covering is only noted, but a text that is no length is still refused. */
function readSoftCovering(reader: FieldReader, covering: SoftCoveringText): void {
  for (const [where, text] of Object.entries(covering)) reader.lengthOrNone(`steps.softCovering.${where}`, text);
}

function readStringer(reader: FieldReader, text: StringerText, units: UnitSystem): StringerChoice {
  const top = reader.choice('stringer.top', text.top, 'hanger-is-riser');
  return {
    stockDepth: reader.lengthOrDefault('stringer.stockDepth', text.stockDepth, { aboveZero: true }),
    stockThickness: reader.lengthOrDefault('stringer.stockThickness', text.stockThickness, { aboveZero: true }),
    tipInset: reader.lengthOrDefault('stringer.tipInset', text.tipInset),
    trim: reader.lengthOrDefault('stringer.trim', text.trim),
    top,
    hanger: readHanger(reader, text.hanger, top, units),
    topTreadRun: reader.lengthOrNone('stringer.topTreadRun', text.topTreadRun),
    kicker: text.kicker
      ? {
          width: reader.length('stringer.kicker.width', text.kicker.width, { aboveZero: true }),
          height: reader.length('stringer.kicker.height', text.kicker.height, { aboveZero: true }),
        }
      : null,
    count: reader.count('stringer.count', text.count, FEWEST_STRINGERS, MOST_STRINGERS),
    spacingMax: reader.lengthOrDefault('stringer.spacingMax', text.spacingMax, { aboveZero: true }),
  };
}

function readHanger(reader: FieldReader, text: string | undefined, top: StringerTop, units: UnitSystem) {
  if (text !== undefined) return reader.length('stringer.hanger', text);
  if (hasHangerBoard(top)) return reader.lengthOrDefault('stringer.hanger', text);
  return reader.use('stringer.hanger', nothingText(units));
}

/** What is left out is not filled in here: it moves no cut, and what is taken for it depends on the lumber data. */
function readCarry(reader: FieldReader, text: CarryText): CarryChoice {
  return {
    species: text.species ?? null,
    grade: text.grade ?? null,
    service: text.service ?? null,
    treatment: text.treatment ?? null,
    support: text.support ?? null,
    duration: text.duration ?? null,
    live: reader.loadOrNone('carry.live', text.live, 'area'),
    point: reader.loadOrNone('carry.point', text.point, 'spot'),
    dead: reader.loadOrNone('carry.dead', text.dead, 'area', true),
  };
}

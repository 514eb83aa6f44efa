/**
 * Version 1 of the job file, as its reader: strict objects, texts still unread, no defaults that
 * would hide a missing key. Each part carries the code of what is said when it does not fit.
 */
import * as z from 'zod/mini';

const length = () => z.string({ error: 'length.noText' });
const words = () => z.string({ error: 'value.text' }).check(z.maxLength(1000, { error: 'value.tooLong' }));
const choice = <const T extends readonly string[]>(values: T) => z.enum(values, { error: 'value.choice' });
const count = () => z.union([z.number(), z.literal('auto')], { error: 'value.countForm' });

const sureFinish = z.strictObject({ length: z.string(), known: z.enum(['measured', 'specified', 'assumed']) });
const finish = () => z.union([z.string(), sureFinish], { error: 'value.finishForm' });

const obstacle = z.strictObject({
  name: z.optional(words()),
  near: length(),
  far: length(),
  height: length(),
  heightFar: z.optional(length()),
  clearance: z.optional(length()),
});

const survey = z.strictObject({
  rise: length(),
  footBelowReading: z.optional(length()),
  readingFromHeader: z.optional(length()),
  fallAlong: z.optional(length()),
  fallAlongOver: z.optional(length()),
  fallAcross: z.optional(length()),
  fallAcrossOver: z.optional(length()),
  lowerToAdd: z.optional(finish()),
  lowerLaid: z.optional(choice(['after-stairs', 'before-stairs'])),
  upperToAdd: z.optional(finish()),
  upperSubfloor: z.optional(length()),
  headerDepth: z.optional(length()),
  floorDepth: z.optional(length()),
  obstacles: z.optional(z.array(obstacle, { error: 'value.list' })),
  openingFraming: z.optional(length()),
  headerLining: z.optional(length()),
  widthFraming: z.optional(length()),
  wallboard: z.optional(length()),
  skirt: z.optional(length()),
  spacer: z.optional(length()),
});

const softCovering = z.strictObject({
  lower: z.optional(length()),
  treads: z.optional(length()),
  upper: z.optional(length()),
});

const steps = z.strictObject({
  risers: z.optional(count()),
  run: z.optional(length()),
  nosing: z.optional(length()),
  treadThickness: z.optional(finish()),
  riserThickness: z.optional(length()),
  joint: z.optional(choice(['tread-butts-riser', 'riser-on-tread'])),
  upperNosingThickness: z.optional(length()),
  softCovering: z.optional(softCovering),
});

const kicker = z.strictObject({ width: length(), height: length() });

const stringer = z.strictObject({
  stockDepth: z.optional(length()),
  stockThickness: z.optional(length()),
  tipInset: z.optional(length()),
  trim: z.optional(length()),
  top: z.optional(choice(['header-behind-riser', 'hanger-is-riser', 'hanger-behind-riser', 'level-with-floor'])),
  hanger: z.optional(length()),
  topTreadRun: z.optional(length()),
  kicker: z.optional(kicker),
  count: z.optional(count()),
  spacingMax: z.optional(length()),
});

const load = () => z.string({ error: 'load.noText' });
const carry = z.strictObject({
  species: z.optional(words()),
  grade: z.optional(words()),
  service: z.optional(choice(['dry', 'wet'])),
  treatment: z.optional(choice(['none', 'incised'])),
  support: z.optional(choice(['free-standing', 'along-walls'])),
  duration: z.optional(choice(['permanent', 'occupancy', 'snow', 'construction'])),
  live: z.optional(load()),
  point: z.optional(load()),
  dead: z.optional(load()),
});

const stair = z.strictObject({
  id: words(),
  name: z.optional(words()),
  survey,
  steps: z.optional(steps),
  stringer: z.optional(stringer),
  carry: z.optional(carry),
});

const local = z.strictObject({ field: words(), value: z.string({ error: 'value.text' }), note: z.optional(words()) });
const rules = z.strictObject({
  pack: z.optional(words()),
  profile: z.optional(words()),
  local: z.optional(z.array(local, { error: 'value.list' })),
});

export const jobSchema = z.strictObject({
  format: z.literal('pitchboard.job'),
  version: z.literal(1),
  name: z.optional(words()),
  units: z.optional(choice(['imperial', 'metric'])),
  markStep: z.optional(length()),
  tapeDoubt: z.optional(length()),
  rules: z.optional(rules),
  stairs: z.array(stair, { error: 'value.list' }),
});

/** Every key that an object of the file may have, by the path of the object without list numbers. */
export const KNOWN_KEYS: Readonly<Record<string, readonly string[]>> = {
  '': Object.keys(jobSchema.shape),
  rules: Object.keys(rules.shape),
  'rules.local': Object.keys(local.shape),
  stairs: Object.keys(stair.shape),
  'stairs.survey': Object.keys(survey.shape),
  'stairs.survey.obstacles': Object.keys(obstacle.shape),
  'stairs.survey.lowerToAdd': Object.keys(sureFinish.shape),
  'stairs.survey.upperToAdd': Object.keys(sureFinish.shape),
  'stairs.steps.treadThickness': Object.keys(sureFinish.shape),
  'stairs.steps': Object.keys(steps.shape),
  'stairs.steps.softCovering': Object.keys(softCovering.shape),
  'stairs.stringer': Object.keys(stringer.shape),
  'stairs.carry': Object.keys(carry.shape),
  'stairs.stringer.kicker': Object.keys(kicker.shape),
};

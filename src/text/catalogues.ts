/**
 * All texts of the program. US trade terms are the base; the UK catalogue says only what the UK
 * trade says otherwise. A key that is missing here does not compile where it is used.
 */
import { carryEn, carryUk } from './carry.en';
import { explainUk } from './explain.en';
import { formulasEn, formulasUk } from './formulas.en';
import { measuredEn, measuredUk } from './measured.en';
import { paperEn } from './paper.en';
import { paperUk } from './paperUk';
import { problemsEn } from './problems.en';
import { rulesEn, rulesUk } from './rules.en';
import { screenEn } from './screen.en';
import { searchEn, searchUk } from './search.en';
import { ukTerms } from './ukTerms';
import { ukWork } from './ukWork';

/** US words for the trade, or UK ones. */
export type Terms = 'us' | 'uk';

const us = {
  ...problemsEn,
  ...screenEn,
  ...rulesEn,
  ...measuredEn,
  ...paperEn,
  ...formulasEn,
  ...carryEn,
  ...searchEn,
} as const;
export type TextKey = keyof typeof us;

export const CATALOGUES: Readonly<Record<Terms, Readonly<Partial<Record<TextKey, string>>>>> = {
  us,
  uk: {
    ...ukWork,
    ...ukTerms,
    ...rulesUk,
    ...measuredUk,
    ...explainUk,
    ...formulasUk,
    ...carryUk,
    ...paperUk,
    ...searchUk,
  },
};

/**
 * Texts that the page gets with the part of it that needs them, or `soon`, right after it has shown; all
 * others come with the page itself.
 */
export type TextGroup = 'page' | 'soon' | 'figures' | 'findings' | 'paper' | 'carry' | 'search';

/** Which texts are late, by the first word of their key. */
const LATE: Readonly<Record<'figures' | 'findings', readonly string[]>> = {
  figures: (
    'board check floor head heel laidOut marks notes pole rips rise square sum top width cut layout print set ' +
    'walk choose toes explain formula because origin rounded rows audit'
  ).split(' '),
  findings: 'amendment confidence danger finding findings lookup measured profile unit where'.split(' '),
};

/** What nobody reads while the first things are measured, by the first words of its key. */
const SOON: readonly string[] = [
  'cli',
  'note',
  'offline',
  'number',
  'keypad',
  'refused',
  'local',
  'pack',
  'sight',
  ...['title', 'name', 'undo', 'close', 'newName', 'copyName', 'add', 'up', 'down', 'copy', 'remove', 'show'].map(
    (word) => `stairs.${word}`,
  ),
  ...['shown', 'summary', 'notLaidOut'].map((word) => `stairs.${word}`),
  'overhead',
  'window',
  'measure.overhead',
  ...['readingFromHeader', 'fallAlong', 'fallAlongOver', 'fallAcross', 'fallAcrossOver'].flatMap((key) => [
    `field.survey.${key}`,
    `hint.survey.${key}`,
  ]),
  ...['steps.risers', 'steps.run', 'steps.nosing', 'steps.riserThickness', 'steps.joint', 'steps.softCovering'].flatMap(
    (key) => [`field.${key}`, `hint.${key}`],
  ),
  ...['steps.upperNosingThickness', 'stringer', 'rules', 'name', 'stair', 'units', 'markStep', 'tapeDoubt'].flatMap(
    (key) => [`field.${key}`, `hint.${key}`],
  ),
  ...['stringer', 'steps', 'markStep', 'rules'].map((key) => `choice.${key}`),
  ...[
    'board',
    'heel',
    'topEnd',
    'step',
    'none',
    'gaugeLine',
    'headerContact',
    'plumbCut',
    'notchDepth',
    'stepLength',
  ].map((word) => `drawing.${word}`),
  ...['effect', 'back', 'picture', 'word', 'guess', 'caution', 'fall'].map((word) => `measure.${word}`),
  // Things to measure that are still closed.
  ...['rise', 'finishes', 'opening', 'header', 'depth', 'widths'].map((thing) => `measure.without.${thing}`),
  ...['lowerToAdd', 'lowerLaid', 'upperToAdd', 'upperSubfloor', 'openingFraming', 'headerLining', 'headerDepth'].map(
    (key) => `hint.survey.${key}`,
  ),
  ...['floorDepth', 'footBelowReading', 'widthFraming', 'wallboard', 'skirt', 'spacer'].map(
    (key) => `hint.survey.${key}`,
  ),
  'choice.survey',
  'left.tapeDoubt',
  'hint.steps',
  // What is said once something has been typed, or has gone wrong.
  'problem',
  'fault',
  'count',
  'draftBanner',
  'results.none',
  'results.heavy',
  'app.dropHere',
  ...['loss', 'failed', 'reason', 'takeOver', 'saveNow', 'writing'].map((word) => `draft.${word}`),
  ...['odd', 'apart', 'take', 'taken', 'spread', 'how', 'reading', 'spot', 'first'].map((word) => `measure.${word}`),
  ...['tall', 'short', 'leadAt'].map((word) => `strip.${word}`),
  'known',
  'results.caution',
  'part',
  'form.parts',
  'terms',
  'units',
  'bar.terms',
  'bar.gloves',
  ...['close', 'not-checked', 'unknown', 'inside', 'outside'].map((word) => `tag.${word}`),
  ...['headerDepth', 'floorDepth', 'openingFraming', 'widthFraming'].map((key) => `left.survey.${key}`),
  ...['opened', 'saved', 'saveFailed', 'openFailed', 'tooLarge', 'several', 'newJob'].map((word) => `file.${word}`),
];

export function groupOf(key: string): TextGroup {
  const [word = ''] = key.split('.');
  if (Object.hasOwn(carryEn, key)) return 'carry';
  if (Object.hasOwn(searchEn, key)) return 'search';
  if (LATE.figures.includes(word)) return 'figures';
  if (LATE.findings.includes(word)) return 'findings';
  if (Object.hasOwn(paperEn, key)) return 'paper';
  return SOON.some((words) => key === words || key.startsWith(`${words}.`)) ? 'soon' : 'page';
}

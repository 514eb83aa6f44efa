/** Every reading as it was typed, with room to measure it again: numbers without a source are where jobs go wrong. */
import type { FinishText, StairText } from '../../core/job/jobText';
import { unknownDrivers } from '../../core/layout/unknownDrivers';
import { finishWindows } from '../../core/plan/finishWindows';
import { isTextKey } from '../../text/say';
import { windowWords } from '../../text/windowText';
import { plainText } from '../plainText';
import type { LeafContext, LeafMaker } from './leaf';
import { listLeaves } from './listLeaves';
import { BLANK, type CellText, WORDS, words } from './table';

const GROUPS = {
  survey: [
    'rise',
    'footBelowReading',
    'readingFromHeader',
    'fallAlong',
    'fallAlongOver',
    'fallAcross',
    'fallAcrossOver',
    'lowerToAdd',
    'lowerLaid',
    'upperToAdd',
    'upperSubfloor',
    'openingFraming',
    'floorDepth',
    'headerDepth',
    'headerLining',
    'widthFraming',
    'wallboard',
    'skirt',
    'spacer',
  ],
  steps: ['run', 'nosing', 'treadThickness', 'riserThickness', 'upperNosingThickness'],
  stringer: ['stockDepth', 'stockThickness'],
} as const;

export const makeSurvey: LeafMaker = (context) => {
  const { say, content, job, plan } = context;
  const stair = job.stairs.find(({ id }) => id === plan.layout.job.id) ?? job.stairs[0];
  const width = content.right - content.left;
  const rows = Object.entries(GROUPS).flatMap(([group, keys]) =>
    keys.flatMap((key) => (stair === undefined ? [] : rowOf(context, stair, `${group}.${key}`))),
  );
  if (stair !== undefined) rows.push(...overheadRows(context, stair));
  rows.push(...windowRows(context));
  return listLeaves(context, {
    title: say('sheets.survey'),
    under: say('sheets.survey.under'),
    columns: [
      { head: say('sheets.reading'), width: width * 0.25 },
      { head: say('sheets.asTyped'), width: width * 0.19 },
      { head: say('sheets.howSure'), width: width * 0.2 },
      { head: say('sheets.tool'), width: width * 0.12 },
      { head: say('sheets.byWhom'), width: width * 0.12 },
      { head: say('sheets.again'), width: width * 0.12 },
    ],
    rows,
    style: WORDS,
  });
};

/** Of a floor that is level nobody needs to say where on it the tape stood, or over what it was found so. */
const OF_SLOPE = ['survey.readingFromHeader', 'survey.fallAlongOver', 'survey.fallAcrossOver'];

/** What the floors may come out as, for those who lay them, and which unknown to ask about first. */
function windowRows({ say, plan }: LeafContext): CellText[][] {
  const { units } = plan.layout.job;
  const [driver] = unknownDrivers(plan.layout);
  const row = (what: string, value: string): CellText[] => [
    words(what),
    words(value, true),
    words(''),
    BLANK,
    BLANK,
    BLANK,
  ];
  return [
    ...finishWindows(plan).map(({ surface, window }) =>
      row(say('window.onSheet', { surface: say(`window.${surface}`) }), windowWords(say, window, units)),
    ),
    ...(driver === undefined ? [] : [row(say('window.askFirst'), say(`window.${driver.surface}`))]),
  ];
}

/** Each thing overhead, as it was typed. */
function overheadRows({ say }: LeafContext, stair: StairText): CellText[][] {
  return (stair.survey.obstacles ?? []).flatMap((obstacle, at) =>
    (['near', 'far', 'height', 'heightFar', 'clearance'] as const).flatMap((name) => {
      const typed = obstacle[name];
      if (typed === undefined) return [];
      const what = say(`overhead.${name}`, { number: at + 1 });
      const called = obstacle.name === undefined ? what : `${what} (${plainText(obstacle.name)})`;
      return [[words(called), words(plainText(typed), true), words(''), BLANK, BLANK, BLANK]];
    }),
  );
}

/** A key that is not given and has no usual size does not concern this stair. */
function rowOf({ say, plan }: LeafContext, stair: StairText, key: string): CellText[][] {
  const typed = typedAt(stair, key);
  const used = plan.defaults.find((one) => one.key === key)?.used;
  if (typed === undefined && used === undefined && OF_SLOPE.includes(key)) return [];
  const sure =
    typed === undefined
      ? used === undefined
        ? say('sheets.notMeasured')
        : say('sheets.usualSize')
      : typed === 'unknown'
        ? say('tag.unknown')
        : typeof typed === 'object'
          ? say(`sheets.known.${typed.known}`)
          : '';
  const text = choiceText(say, key, (typeof typed === 'object' ? typed.length : typed) ?? used ?? '');
  return [[words(fieldName(say, key)), words(plainText(text), true), words(sure), BLANK, BLANK, BLANK]];
}

function typedAt(stair: StairText, key: string): FinishText | undefined {
  const [group, name] = key.split('.') as ['survey' | 'steps' | 'stringer', string];
  return (stair[group] as Readonly<Record<string, FinishText | undefined>> | undefined)?.[name];
}

function choiceText(say: LeafContext['say'], key: string, typed: string): string {
  const choice = `choice.${key}.${typed}`;
  return isTextKey(choice) ? say(choice) : typed;
}

export function fieldName(say: LeafContext['say'], key: string): string {
  const field = `field.${key}`;
  return isTextKey(field) ? say(field) : key;
}

/** True for what a tape can be held to, and not for what is only decided. */
export function isMeasured(key: string): boolean {
  return Object.entries(GROUPS).some(([group, keys]) =>
    keys.some((name) => `${group}.${name}` === key && name !== 'lowerLaid'),
  );
}

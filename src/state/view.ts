/**
 * How the user looks at the job, and what they have noted and ticked off on the way: kept in the
 * draft with it, never in the job file. Nothing here changes a number of a stair.
 */

/** The job's own order. */
export const STEPS = ['measure', 'choose', 'lay-out', 'cut', 'set', 'check', 'print'] as const;
export type Step = (typeof STEPS)[number];

export const THEMES = ['paper', 'sun', 'dim'] as const;
export type Theme = (typeof THEMES)[number];

export const TERMS = ['us', 'uk'] as const;
export type Terms = (typeof TERMS)[number];

/** The lists that can be walked through one number at a time. */
export const WALK_LISTS = ['marks', 'rips', 'setting', 'pole'] as const;
export type WalkList = (typeof WALK_LISTS)[number];

export interface Walk {
  readonly list: WalkList;
  /** Which entry of the list is shown, from 0. */
  readonly at: number;
}

export interface View {
  readonly stairIndex: number;
  readonly theme: Theme;
  readonly terms: Terms;
  readonly step: Step;
  /** Larger keys, and only what is in hand. */
  readonly gloves: boolean;
  /** Null while the ordinary screens are shown. */
  readonly walk: Walk | null;
  /** By stair id: the entries that were ticked off, each with the number it had then. */
  readonly ticked: Readonly<Record<string, readonly string[]>>;
  /** By stair id: readings of the rise as the tape gave them, before one was taken. */
  readonly readings: Readonly<Record<string, readonly string[]>>;
  /** By stair id: what the search for layouts is to keep to, each wish as typed. */
  readonly wishes: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

export const FIRST_VIEW: View = {
  stairIndex: 0,
  theme: 'paper',
  terms: 'us',
  step: 'measure',
  gloves: false,
  walk: null,
  ticked: {},
  readings: {},
  wishes: {},
};

/**
 * The view of a kept draft. A setting that this version does not know falls back alone: no work
 * hangs on it.
 */
export function viewFrom(value: unknown): View {
  const kept = isRecord(value) ? value : {};
  return {
    stairIndex: isCount(kept['stairIndex']) ? kept['stairIndex'] : FIRST_VIEW.stairIndex,
    theme: oneOf(THEMES, kept['theme'], FIRST_VIEW.theme),
    terms: oneOf(TERMS, kept['terms'], FIRST_VIEW.terms),
    step: oneOf(STEPS, kept['step'], FIRST_VIEW.step),
    gloves: kept['gloves'] === true,
    walk: walkFrom(kept['walk']),
    ticked: textLists(kept['ticked']),
    readings: textLists(kept['readings']),
    wishes: textRecords(kept['wishes']),
  };
}

/** The settings alone, out of a state that holds more. */
export function viewOf({ stairIndex, theme, terms, step, gloves, walk, ticked, readings, wishes }: View): View {
  return { stairIndex, theme, terms, step, gloves, walk, ticked, readings, wishes };
}

function walkFrom(value: unknown): Walk | null {
  if (!isRecord(value) || !isCount(value['at'])) return null;
  const list = WALK_LISTS.find((known) => known === value['list']);
  return list === undefined ? null : { list, at: value['at'] };
}

function textLists(value: unknown): Readonly<Record<string, readonly string[]>> {
  if (!isRecord(value)) return {};
  const lists = Object.entries(value).filter(
    (entry): entry is [string, string[]] =>
      Array.isArray(entry[1]) && entry[1].every((text) => typeof text === 'string'),
  );
  return Object.fromEntries(lists);
}

function textRecords(value: unknown): View['wishes'] {
  if (!isRecord(value)) return {};
  const records = Object.entries(value).filter(
    (entry): entry is [string, Record<string, string>] =>
      isRecord(entry[1]) && Object.values(entry[1]).every((text) => typeof text === 'string'),
  );
  return Object.fromEntries(records);
}

function oneOf<T extends string>(known: readonly T[], value: unknown, usual: T): T {
  return known.find((each) => each === value) ?? usual;
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

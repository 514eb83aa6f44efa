/**
 * Every text that a person reads passes here. One library (Lingui) fills in values and plurals;
 * the catalogues are typed by their keys, so that a missing text does not compile.
 */
import { type I18n, setupI18n } from '@lingui/core';
import type { Problem, ProblemValues } from '../core/result';
import { inch, whole } from '../core/units/exact';
import { formatLength } from '../core/units/format';
import type { UnitSystem } from '../core/units/length';
import type { Terms, TextKey } from './catalogues';
import { COMPILED, type CompiledText } from './compiled';

export type { Terms, TextKey } from './catalogues';
export type Speaker = (key: TextKey, values?: ProblemValues) => string;

/** A speaker for one set of terms; the same object every time, so that React can compare it. */
export function speakerFor(terms: Terms): Speaker {
  return SPEAKERS[terms];
}

export function isTextKey(key: string): key is TextKey {
  return Object.hasOwn(COMPILED.us, key);
}

/** A problem or note as its sentence, with its lengths in the job's units. */
export function sayProblem(say: Speaker, found: Pick<Problem, 'code' | 'values'>, units: UnitSystem): string {
  const key = found.code.startsWith('note.') ? found.code : `problem.${found.code}`;
  return isTextKey(key) ? say(key, inWords(found.values, units)) : found.code;
}

/** Lengths in a message are shown to 1/32 in or 0.5 mm: enough to act on. */
const MESSAGE_STEP = { imperial: inch(1 / 32), metric: { num: whole(1).num, den: 2n } };

function inWords(values: ProblemValues, units: UnitSystem): ProblemValues {
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      name.endsWith('Mm') ? formatLength(Number(value), MESSAGE_STEP[units], units) : value,
    ]),
  );
}

const SPEAKERS: Readonly<Record<Terms, Speaker>> = { us: makeSpeaker('us'), uk: makeSpeaker('uk') };

function makeSpeaker(terms: Terms): Speaker {
  const locale = terms === 'uk' ? 'en-GB' : 'en-US';
  const i18n: I18n = setupI18n();
  const texts: Record<string, CompiledText> = { ...COMPILED.us, ...(terms === 'uk' ? COMPILED.uk : {}) };
  i18n.load(locale, texts);
  i18n.activate(locale);
  return (key, values) => i18n._(key, values === undefined ? undefined : { ...values });
}

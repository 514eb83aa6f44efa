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
import { COMPILED, type CompiledCatalogue, type CompiledText } from './compiled';

export type { Terms, TextKey } from './catalogues';
export type Speaker = (key: TextKey, values?: ProblemValues) => string;

const KNOWN: Record<string, CompiledText> = { ...COMPILED.us };

/** A speaker for one set of terms; the same object until it has more to say, so that React can compare it. */
export function speakerFor(terms: Terms): Speaker {
  return speakers[terms];
}

/** Tells when texts have come, and with them new speakers. */
export function onTexts(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export function isTextKey(key: string): key is TextKey {
  return Object.hasOwn(KNOWN, key);
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

const LOCALES: Readonly<Record<Terms, string>> = { us: 'en-US', uk: 'en-GB' };
const VOICES: Readonly<Record<Terms, I18n>> = { us: voice('us'), uk: voice('uk') };
const listeners = new Set<() => void>();
let speakers = newSpeakers();

/** Texts that come later than the page: from then on they are said like the others. */
export function addTexts(texts: Readonly<Record<Terms, CompiledCatalogue>>): void {
  const isNothing = Object.keys({ ...texts.us, ...texts.uk }).length === 0;
  if (isNothing) return;
  Object.assign(KNOWN, texts.us);
  VOICES.us.load(LOCALES.us, all(texts, 'us'));
  VOICES.uk.load(LOCALES.uk, all(texts, 'uk'));
  speakers = newSpeakers();
  for (const listener of listeners) listener();
}

function newSpeakers(): Readonly<Record<Terms, Speaker>> {
  return { us: speakWith(VOICES.us), uk: speakWith(VOICES.uk) };
}

function voice(terms: Terms): I18n {
  const i18n: I18n = setupI18n();
  i18n.load(LOCALES[terms], all(COMPILED, terms));
  i18n.activate(LOCALES[terms]);
  return i18n;
}

/** A text that is still on its way is a blank, and not its key. */
function speakWith(i18n: I18n): Speaker {
  return (key, values) => (isTextKey(key) ? i18n._(key, values === undefined ? undefined : { ...values }) : '');
}

/** The UK catalogue says only what the UK trade says otherwise. */
function all(texts: Readonly<Record<Terms, CompiledCatalogue>>, terms: Terms): Record<string, CompiledText> {
  return { ...texts.us, ...(terms === 'uk' ? texts.uk : {}) };
}

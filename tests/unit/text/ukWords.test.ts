/** Whoever has chosen UK words meets no US one: read through all texts, with the words of the glossary. */
import { expect, test } from 'vitest';
import { CATALOGUES, type TextKey } from '../../../src/text/catalogues';

/** Words that the UK trade calls otherwise in any sense of theirs. */
const US_ONLY =
  /\b(stringers?|headers?|skirts?|wallboard|drywall|spacers?|subfloor|story|nosing line|lumber|baseboard|building department)\b/i;

/** What the commands answer is US English whatever the page says; keys of the file are no words. */
const withoutKeys = (text: string) =>
  text.replace(/\{(\w+)(?=[,}])/g, '{').replace(/\b(survey|steps|stringer|carry)\.\w+/g, '');
const ofThePage = (key: string) => !key.startsWith('cli.');

const us = Object.entries(CATALOGUES.us).filter(([key]) => ofThePage(key)) as [TextKey, string][];

test('every text with a word of the US trade has its UK form', () => {
  expect(us.length).toBeGreaterThan(800);
  const missing = us.filter(([key, text]) => US_ONLY.test(withoutKeys(text)) && CATALOGUES.uk[key] === undefined);
  expect(missing.map(([key, text]) => `${key}: ${text}`)).toEqual([]);
});

test('no UK form holds a word of the US trade', () => {
  const left = Object.entries(CATALOGUES.uk).filter(([, text]) => US_ONLY.test(withoutKeys(text)));
  expect(left.map(([key, text]) => `${key}: ${text}`)).toEqual([]);
});

test('a UK form fills in what its US form fills in', () => {
  const values = (text: string) =>
    [...new Set([...text.matchAll(/\{(\w+)(?=[,}])/g)].map(([, name]) => name ?? ''))].toSorted((a, b) =>
      a.localeCompare(b),
    );
  for (const [key, text] of Object.entries(CATALOGUES.uk)) {
    expect(values(text), key).toEqual(values(CATALOGUES.us[key as TextKey] ?? ''));
  }
});

/**
 * All texts of the program. US trade terms are the base; the UK catalogue says only what the UK
 * trade says otherwise. A key that is missing here does not compile where it is used.
 */
import { explainUk } from './explain.en';
import { formulasEn, formulasUk } from './formulas.en';
import { paperEn } from './paper.en';
import { problemsEn } from './problems.en';
import { rulesEn, rulesUk } from './rules.en';
import { screenEn } from './screen.en';
import { ukTerms } from './ukTerms';

/** US words for the trade, or UK ones. */
export type Terms = 'us' | 'uk';

const us = { ...problemsEn, ...screenEn, ...rulesEn, ...paperEn, ...formulasEn } as const;
export type TextKey = keyof typeof us;

export const CATALOGUES: Readonly<Record<Terms, Readonly<Partial<Record<TextKey, string>>>>> = {
  us,
  uk: { ...ukTerms, ...rulesUk, ...explainUk, ...formulasUk },
};

/** Texts that the page gets with the part of it that needs them; all others come with the page itself. */
export type TextGroup = 'page' | 'figures' | 'findings' | 'paper';

/** Which texts are late, by the first word of their key. */
const LATE: Readonly<Record<Exclude<TextGroup, 'page' | 'paper'>, readonly string[]>> = {
  figures: wordsIn(
    `board check floor head heel laidOut marks notes pole rips rise square
     sum top width cut layout print set walk choose explain formula because
     formula origin rounded rows audit`,
  ),
  findings: ['amendment', 'confidence', 'finding', 'findings', 'lookup', 'profile', 'unit'],
};

function wordsIn(list: string): readonly string[] {
  return list.split(/\s+/);
}

export function groupOf(key: string): TextGroup {
  const [word = ''] = key.split('.');
  if (LATE.figures.includes(word)) return 'figures';
  if (LATE.findings.includes(word)) return 'findings';
  return Object.hasOwn(paperEn, key) ? 'paper' : 'page';
}

/**
 * All texts of the program. US trade terms are the base; the UK catalogue says only what the UK
 * trade says otherwise. A key that is missing here does not compile where it is used.
 */
import { paperEn } from './paper.en';
import { problemsEn } from './problems.en';
import { rulesEn, rulesUk } from './rules.en';
import { screenEn } from './screen.en';
import { ukTerms } from './ukTerms';

/** US words for the trade, or UK ones. */
export type Terms = 'us' | 'uk';

const us = { ...problemsEn, ...screenEn, ...rulesEn, ...paperEn } as const;
export type TextKey = keyof typeof us;

export const CATALOGUES: Readonly<Record<Terms, Readonly<Partial<Record<TextKey, string>>>>> = {
  us,
  uk: { ...ukTerms, ...rulesUk },
};

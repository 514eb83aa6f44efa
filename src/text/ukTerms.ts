/** UK trade terms where they differ: going for run, string for stringer, plasterboard for wallboard. */
import type { problemsEn } from './problems.en';
import type { screenEn } from './screen.en';

export const ukTerms: Partial<Record<keyof typeof problemsEn | keyof typeof screenEn, string>> = {};

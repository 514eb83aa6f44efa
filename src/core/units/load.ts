/**
 * Loads as text with their unit, and the forces behind them: newtons, kilopascals. What a load does to a stringer
 * has square roots and factors in it, so a float is enough. The pound-force is 0.45359237 kg at 9.80665 m/s², by
 * the agreement of 1959 and the third general conference on weights and measures (1901).
 */
import { inchMm } from './exact';

/** Spread over the stair, or on one spot. */
export type LoadKind = 'area' | 'spot';

export type LoadFault =
  | 'load.empty'
  | 'load.noUnit'
  | 'load.unread'
  | 'load.nothing'
  | 'load.tooMuch'
  | 'length.decimalComma';

export type LoadReading =
  | { readonly ok: true; readonly load: number }
  | { readonly ok: false; readonly fault: LoadFault };

const POUND_N = 4.4482216152605;
const LONGEST_TEXT = 40;
/** More than any floor is built for: a slip of the unit. Kilopascals and newtons. */
const MOST: Readonly<Record<LoadKind, number>> = { area: 100, spot: 100_000 };

const FORMS: Readonly<Record<LoadKind, readonly (readonly [RegExp, (value: number) => number])[]>> = {
  area: [
    [/^psf$/, psfToKpa],
    [/^(kpa|kn\/m2|kn\/m²)$/, (value) => value],
  ],
  spot: [
    [/^(lbf|lb|lbs)$/, poundsToNewtons],
    [/^kn$/, (value) => value * 1000],
    [/^n$/, (value) => value],
  ],
};

export function poundsToNewtons(pounds: number): number {
  return pounds * POUND_N;
}

/** Pounds on a square foot as kilopascals. */
export function psfToKpa(psf: number): number {
  return (psf * POUND_N * 1000) / inchMm(12) ** 2;
}

/** Pounds on a square inch as newtons on a square millimetre. */
export function psiToMpa(psi: number): number {
  return (psi * POUND_N) / inchMm(1) ** 2;
}

/**
 * @param mayBeNothing a dead load that somebody leaves out on purpose
 * @returns kilopascals for `area`, newtons for `spot`, or why the text is neither
 */
export function parseLoad(text: string, kind: LoadKind, mayBeNothing = false): LoadReading {
  const plain = text.trim();
  if (plain === '') return { ok: false, fault: 'load.empty' };
  if (plain.length <= LONGEST_TEXT && /^\d*,\d+/.test(plain)) return { ok: false, fault: 'length.decimalComma' };
  const parts = plain.length <= LONGEST_TEXT ? /^(\d+\.?\d*|\.\d+) ?([a-z][a-z0-9²/]*)?$/i.exec(plain) : null;
  if (parts === null) return { ok: false, fault: 'load.unread' };
  const [, digits = '', unit] = parts;
  if (unit === undefined) return { ok: false, fault: 'load.noUnit' };
  const form = FORMS[kind].find(([pattern]) => pattern.test(unit.toLowerCase()));
  if (form === undefined) return { ok: false, fault: 'load.unread' };
  const load = form[1](Number(digits));
  if (load === 0 && !mayBeNothing) return { ok: false, fault: 'load.nothing' };
  return load > MOST[kind] ? { ok: false, fault: 'load.tooMuch' } : { ok: true, load };
}

/** Completes a bare number with the unit of the job: `40` becomes `40 psf`. */
export function withLoadUnit(text: string, kind: LoadKind, units: 'imperial' | 'metric'): string {
  const plain = text.trim();
  if (!/^(\d+\.?\d*|\.\d+)$/.test(plain)) return plain;
  return `${plain} ${USUAL_UNIT[units][kind]}`;
}

const USUAL_UNIT = {
  imperial: { area: 'psf', spot: 'lbf' },
  metric: { area: 'kPa', spot: 'kN' },
} as const;

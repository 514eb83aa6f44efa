/** What a printer makes of the proof bars: four lengths as typed, and the two factors that they give. */
import { useState } from 'react';
import { type Correction, readCorrection } from '../../core/drawing/correction';
import type { Problem } from '../../core/result';
import { toMm } from '../../core/units/exact';
import { parseLength, type UnitSystem, withUnit } from '../../core/units/length';

export const BARS = ['shortSays', 'shortIs', 'longSays', 'longIs'] as const;
export type Bar = (typeof BARS)[number];

export interface Printer {
  readonly typed: Readonly<Record<Bar, string>>;
  readonly type: (bar: Bar, text: string) => void;
  /** Null: nothing typed, or not all of it reads. */
  readonly correction: Correction | null;
  readonly problems: readonly Problem[];
  readonly isTyped: boolean;
}

const NOTHING: Readonly<Record<Bar, string>> = { shortSays: '', shortIs: '', longSays: '', longIs: '' };

export function usePrinter(units: UnitSystem): Printer {
  const [typed, setTyped] = useState(NOTHING);
  const lengths = BARS.map((bar) => lengthOf(typed[bar], units));
  const [shortSays, shortIs, longSays, longIs] = lengths;
  const reading =
    shortSays && shortIs && longSays && longIs ? readCorrection(shortIs / shortSays, longIs / longSays) : null;
  return {
    typed,
    type: (bar, text) => setTyped((before) => ({ ...before, [bar]: text })),
    correction: reading?.ok ? reading.value : null,
    problems: reading === null || reading.ok ? [] : reading.problems,
    isTyped: BARS.some((bar) => typed[bar].trim() !== ''),
  };
}

/** Millimetres, or 0 for what is no length. */
function lengthOf(text: string, units: UnitSystem): number {
  const completed = withUnit(text, units, false);
  const reading = completed.ok ? parseLength(completed.text) : null;
  return reading?.ok ? toMm(reading.length) : 0;
}

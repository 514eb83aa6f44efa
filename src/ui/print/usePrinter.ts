/**
 * The printer in hand: one that is remembered, or none, and what a tape has just said of its proof bars. Bars on
 * a sheet that was already corrected show what is left of the error, so the new factor is one times the other.
 */
import { useEffect, useState } from 'react';
import { type Correction, readCorrection, UNCORRECTED } from '../../core/drawing/correction';
import type { Problem } from '../../core/result';
import { toMm } from '../../core/units/exact';
import { parseLength, type UnitSystem, withUnit } from '../../core/units/length';
import { forgetPrinter, type KnownPrinter, keepPrinter, knownPrinters, printerName } from '../../platform/printers';

export const BARS = ['shortSays', 'shortIs', 'longSays', 'longIs'] as const;
export type Bar = (typeof BARS)[number];

export interface Printer {
  readonly typed: Readonly<Record<Bar, string>>;
  readonly type: (bar: Bar, text: string) => void;
  readonly known: readonly KnownPrinter[];
  /** Name of the remembered one that is used; empty for none. */
  readonly chosen: string;
  readonly choose: (name: string) => void;
  readonly name: string;
  readonly call: (name: string) => void;
  readonly remember: () => Promise<void>;
  readonly forget: () => Promise<void>;
  /** Null: none chosen and nothing typed, or not all of it reads. */
  readonly correction: Correction | null;
  readonly problems: readonly Problem[];
  readonly isTyped: boolean;
  readonly outcome: '' | 'kept' | 'notKept' | 'forgotten' | 'notForgotten';
}

const NOTHING: Readonly<Record<Bar, string>> = { shortSays: '', shortIs: '', longSays: '', longIs: '' };

export function usePrinter(units: UnitSystem): Printer {
  const [typed, setTyped] = useState(NOTHING);
  const [known, setKnown] = useState<readonly KnownPrinter[]>([]);
  const [chosen, setChosen] = useState('');
  const [name, setName] = useState('');
  const [outcome, setOutcome] = useState<Printer['outcome']>('');
  useEffect(() => {
    void knownPrinters().then((found) => setKnown(found ?? []));
  }, []);
  const base = known.find((printer) => printer.name === chosen) ?? UNCORRECTED;
  const isTyped = BARS.some((bar) => typed[bar].trim() !== '');
  const reading = readBars(typed, units, base);
  const correction = isTyped ? (reading?.ok ? reading.value : null) : chosen === '' ? null : base;

  async function remember(): Promise<void> {
    const plain = printerName(name === '' ? chosen : name);
    if (correction === null || plain === '') return;
    const isKept = await keepPrinter({ name: plain, ...correction });
    setOutcome(isKept ? 'kept' : 'notKept');
    if (!isKept) return;
    setKnown((await knownPrinters()) ?? []);
    setChosen(plain);
    setTyped(NOTHING);
    setName('');
  }

  async function forget(): Promise<void> {
    const isGone = await forgetPrinter(chosen);
    setOutcome(isGone ? 'forgotten' : 'notForgotten');
    if (!isGone) return;
    setKnown((await knownPrinters()) ?? []);
    setChosen('');
  }

  return {
    typed,
    type: (bar, text) => setTyped((before) => ({ ...before, [bar]: text })),
    known,
    chosen,
    choose: setChosen,
    name,
    call: setName,
    remember,
    forget,
    correction,
    problems: reading === null || reading.ok ? [] : reading.problems,
    isTyped,
    outcome,
  };
}

function readBars(typed: Readonly<Record<Bar, string>>, units: UnitSystem, base: Correction) {
  const [shortSays, shortIs, longSays, longIs] = BARS.map((bar) => lengthOf(typed[bar], units));
  if (!shortSays || !shortIs || !longSays || !longIs) return null;
  return readCorrection((base.short * shortIs) / shortSays, (base.long * longIs) / longSays);
}

/** Millimetres, or 0 for what is no length. */
function lengthOf(text: string, units: UnitSystem): number {
  const completed = withUnit(text, units, false);
  const reading = completed.ok ? parseLength(completed.text) : null;
  return reading?.ok ? toMm(reading.length) : 0;
}

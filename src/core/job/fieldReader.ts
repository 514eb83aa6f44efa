/**
 * Reads the texts of one stair key by key, and remembers three things on the way: what is no
 * length, what was left out and replaced, and what nobody knows yet. The place of a problem is
 * the key's path in the file.
 */
import { type Problem, problem } from '../result';
import { type Exact, sign, whole, ZERO } from '../units/exact';
import { type LengthFault, parseLength, type UnitSystem } from '../units/length';
import { type LoadFault, type LoadKind, parseLoad } from '../units/load';
import { type DefaultKey, defaultText } from './defaults';
import type { FinishText } from './jobText';
import type { DefaultUsed, Fall, Finish } from './stairJob';

export type FieldFault =
  | LengthFault
  | LoadFault
  | 'value.notPositive'
  | 'value.count'
  | 'markStep.tooCoarse'
  | 'tapeDoubt.tooMuch'
  | 'obstacle.order';

export interface LengthRules {
  readonly mayBeNegative?: boolean;
  /** For what would make no geometry at zero: a board without depth, a spacing of nothing. */
  readonly aboveZero?: boolean;
}

export interface FallText {
  readonly fall: string | undefined;
  readonly over: string | undefined;
}

export class FieldReader {
  readonly problems: Problem<FieldFault>[] = [];
  readonly defaults: DefaultUsed[] = [];
  readonly unknowns: string[] = [];

  /** @param place path of the object that holds the keys: `stairs[0]` */
  constructor(
    readonly place: string,
    readonly units: UnitSystem,
  ) {}

  length(key: string, text: string, rules: LengthRules = {}): Exact {
    const reading = parseLength(text, rules.mayBeNegative ?? false);
    if (!reading.ok) return this.refuse(key, reading.fault, text);
    if (rules.aboveZero && sign(reading.length) <= 0) return this.refuse(key, 'value.notPositive', text);
    return reading.length;
  }

  lengthOrDefault(key: DefaultKey, text: string | undefined, rules: LengthRules = {}): Exact {
    if (text !== undefined) return this.length(key, text, rules);
    return this.use(key, defaultText(key, this.units), rules);
  }

  /** @param isLevel nothing was said of any slope: then none has a length to fall over, and none is listed as used */
  fall(key: 'survey.fallAlong' | 'survey.fallAcross', text: FallText, isLevel: boolean): Fall {
    const fall = this.lengthOrDefault(key, text.fall, { mayBeNegative: true });
    if (isLevel && text.over === undefined) return { fall, over: whole(1) };
    return { fall, over: this.lengthOrDefault(`${key}Over`, text.over, { aboveZero: true }) };
  }

  lengthOrNone(key: string, text: string | undefined): Exact | null {
    return text === undefined ? null : this.length(key, text);
  }

  /** A key whose default depends on another choice; `used` is the text of that default. */
  use(key: string, used: string, rules: LengthRules = {}): Exact {
    this.defaults.push({ key, used });
    return this.length(key, used, rules);
  }

  /** A finish that nobody has decided is laid out as nothing, and is listed as unknown. */
  finish(key: string, text: FinishText | undefined, rules: LengthRules = {}): Finish {
    if (text === undefined) this.defaults.push({ key, used: 'unknown' });
    if (text === undefined || text === 'unknown') return this.unknown(key, ZERO);
    if (typeof text === 'string') return { amount: this.length(key, text, rules), known: 'specified' };
    return { amount: this.length(key, text.length, rules), known: text.known };
  }

  /** A tread that nobody has decided is laid out with the usual thickness, and is listed as unknown. */
  treadThickness(text: FinishText | undefined): Finish {
    const key = 'steps.treadThickness';
    if (text !== undefined && text !== 'unknown') return this.finish(key, text, { aboveZero: true });
    const used = defaultText(key, this.units);
    this.defaults.push({ key, used: `unknown, laid out as ${used}` });
    return this.unknown(key, this.length(key, used));
  }

  /** A whole number in a range, or left to the program. */
  count(key: string, value: number | 'auto' | undefined, least: number, most: number): number | 'auto' {
    if (value === undefined) this.defaults.push({ key, used: 'auto' });
    if (value === undefined || value === 'auto') return 'auto';
    if (Number.isInteger(value) && value >= least && value <= most) return value;
    this.problems.push(problem(`${this.place}.${key}`, 'value.count', { found: value, least, most }));
    return 'auto';
  }

  choice<T extends string>(key: string, value: T | undefined, usual: T): T {
    if (value === undefined) this.defaults.push({ key, used: usual });
    return value ?? usual;
  }

  /** @returns kilopascals or newtons; null where nothing is said */
  loadOrNone(key: string, text: string | undefined, kind: LoadKind, mayBeNothing = false): number | null {
    if (text === undefined) return null;
    const reading = parseLoad(text, kind, mayBeNothing);
    if (reading.ok) return reading.load;
    this.refuse(key, reading.fault, text);
    return null;
  }

  private unknown(key: string, amount: Exact): Finish {
    this.unknowns.push(key);
    return { amount, known: 'unknown' };
  }

  private refuse(key: string, fault: FieldFault, found: string): Exact {
    this.problems.push(problem(`${this.place}.${key}`, fault, { found: String(found).slice(0, 60) }));
    return ZERO;
  }
}

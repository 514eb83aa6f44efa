/** What a rule is: a row of a pack, and a limit once it is in force. */
import type { Exact } from '../units/exact';

/** `1:n` holds n; `text`, `rule` and `none` carry no number to compare. */
export type RuleUnit =
  | 'in'
  | 'in2'
  | 'mm'
  | 'deg'
  | 'count'
  | 'bool'
  | '1:n'
  | 'psf'
  | 'lbf'
  | 'fc'
  | 'kN'
  | 'kPa'
  | 'text'
  | 'rule'
  | 'none';

/** Read in the rule's own text; read only in a copy; recalled and not yet seen anywhere. */
export type Confidence = 'seen' | 'copy' | 'memory';

/** How a row is to be read; one key for each exception that codes make often. */
export interface RuleTerms {
  /** The stairs it is for; left out: all. One that it is not for meets it. */
  readonly when?: 'open-risers' | 'closed-risers' | undefined;
  /** The code itself calls it usual and does not ask for it. */
  readonly advice?: true | undefined;
  /** Something is required at this figure already, and not only above it. */
  readonly inclusive?: true | undefined;
  /** How it is measured, in our own words, where this code does it otherwise than most. */
  readonly measured?: string | undefined;
}

export interface RuleRow extends RuleTerms {
  readonly field: string;
  readonly value: number | boolean | string | null;
  readonly unit: RuleUnit;
  readonly section: string;
  readonly confidence: Confidence;
  readonly sources: readonly string[];
  /** The profile it holds for; left out: for all. */
  readonly profile?: string | undefined;
}

/** Read there; a page below it was read; seen only where others cite it; recalled and not tried. */
export type AddressMark = 'read' | 'page-below-read' | 'cited' | 'memory';

export interface ReadAt {
  readonly address: string;
  readonly mark: AddressMark;
}

export interface RulePack {
  /** Lower case: what a job names. */
  readonly id: string;
  readonly title: string;
  readonly edition: string;
  readonly jurisdiction: string;
  /** Addresses where it can be read, or its adoption looked up. */
  readonly readAt?: readonly ReadAt[] | undefined;
  /** The pack that it was built on. */
  readonly base?: string | undefined;
  readonly profiles: readonly string[];
  readonly sources: Readonly<Record<string, string>>;
  readonly rows: readonly RuleRow[];
}

/** What the pack says where a local rule stands in its place. */
export interface Replaced {
  readonly value: RuleRow['value'];
  readonly unit: RuleUnit;
  readonly section: string;
}

/** One limit in force: a row of the pack, or what the user put in its place. */
export interface Limit extends RuleTerms {
  readonly field: string;
  readonly value: RuleRow['value'];
  readonly unit: RuleUnit;
  /** The value exactly: millimetres for a length, the number itself for a count; null for words. */
  readonly exact: Exact | null;
  readonly section: string;
  readonly source: string;
  readonly confidence: Confidence | 'local';
  readonly replaced?: Replaced | undefined;
}

/** A band that a proportion rule of the trade asks for; advice, never law. Data: src/packs. */
export interface TasteRule {
  readonly field: 'taste.twoRPlusG' | 'taste.rPlusG' | 'taste.rTimesG';
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly confidence: Confidence;
}

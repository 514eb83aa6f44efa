/**
 * One stair from text to a sheet, checked by the second road before anything is handed out, and not
 * yet judged by the rules: all that the page's first picture needs.
 */
import type { CheckFault } from '../check/checkLayout';
import { checkLayout } from '../check/checkLayout';
import { type PrintedSheet, printedSheet } from '../check/printedSheet';
import { type LocalReader, limitFor, type RuleSet, rulesInForce } from '../codes/inForce';
import type { RulePack } from '../codes/rules';
import type { JobText } from '../job/jobText';
import { readStair } from '../job/readStair';
import type { LayoutLimits } from '../layout/flight';
import { layoutStair, type Note, type StairLayout } from '../layout/layoutStair';
import { failure, problem, type Result, success } from '../result';

/** What the program knows of rules; data from src/packs. */
export interface LayoutBook {
  readonly findPack: (id: string) => RulePack | undefined;
  readonly defaultPack: string;
  /** Who reads local rules; null where that has not come yet, and a job with such rules waits. */
  readonly locals: LocalReader | null;
}

/** A stair laid out, with its sheet. */
export interface StairPlan {
  readonly layout: StairLayout;
  readonly rules: RuleSet;
  readonly sheet: PrintedSheet;
  readonly defaults: StairLayout['defaults'];
  readonly notes: readonly Note[];
}

/**
 * @returns the plan, or what must change first; a layout that fails its own check never leaves. A failure
 *   without a problem waits for who reads local rules.
 */
export function planUnjudged(job: JobText, index: number, book: LayoutBook): Result<StairPlan> {
  const pack = job.rules?.pack ?? book.defaultPack;
  const rules = rulesInForce({ ...job.rules, pack }, book.findPack, book.locals);
  const stair = readStair(job, index);
  if (!rules.ok || !stair.ok) return failure([...problemsIn(rules), ...problemsIn(stair)]);
  const layout = layoutStair(stair.value, limitsOf(rules.value));
  if (!layout.ok) return layout;
  const [fault] = checkLayout(layout.value);
  if (fault !== undefined) return failure([selfCheckFailed(stair.value.place, fault)]);
  return success({
    layout: layout.value,
    rules: rules.value,
    sheet: printedSheet(layout.value),
    defaults:
      job.rules?.pack === undefined
        ? [...layout.value.defaults, { key: 'rules.pack', used: pack }]
        : layout.value.defaults,
    notes: [...layout.value.notes, ...ruleNotes(rules.value, book.locals), ...coveringNote(job, index)],
  });
}

/** What the rules in force contribute to a layout. */
export function limitsOf(rules: RuleSet): LayoutLimits {
  return {
    riserMax: limitFor(rules, 'riser.max'),
    treadMin: limitFor(rules, 'tread.min'),
    headroomMin: limitFor(rules, 'headroom.min'),
  };
}

function problemsIn<T>(result: Result<T>) {
  return result.ok ? [] : result.problems;
}

function selfCheckFailed(place: string, { what, step, expected, found }: CheckFault) {
  return problem(place, 'check.failed', { what, step, expectedMm: expected, foundMm: found });
}

function ruleNotes(rules: RuleSet, locals: LocalReader | null): Note[] {
  const notes: Note[] = [];
  if (rules.pack === null) {
    const code = rules.limits.length === 0 ? 'note.packMissing' : 'note.packMissingLocal';
    notes.push({ code, values: { pack: rules.packId } });
  }
  notes.push(...(locals?.notes(rules.limits) ?? []));
  if (rules.pack !== null && rules.profileMissing) notes.push({ code: 'note.profileMissing', values: {} });
  return notes;
}

function coveringNote(job: JobText, index: number): Note[] {
  return job.stairs[index]?.steps?.softCovering === undefined ? [] : [{ code: 'note.softCovering', values: {} }];
}

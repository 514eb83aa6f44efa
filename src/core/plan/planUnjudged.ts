/**
 * One stair from text to a sheet, checked by the second road before anything is handed out, and not
 * yet judged by the rules: all that the page's first picture needs.
 */
import type { CheckFault } from '../check/checkLayout';
import { checkLayout } from '../check/checkLayout';
import { type PrintedSheet, printedSheet } from '../check/printedSheet';
import { kindOf } from '../codes/fieldKinds';
import { crossedWithPack } from '../codes/localLimits';
import { chooseRules, type Limit, limitFor, type RulePack, type RuleSet } from '../codes/rulePack';
import type { TasteRule } from '../codes/rules';
import type { JobText } from '../job/jobText';
import { readStair } from '../job/readStair';
import type { LayoutLimits } from '../layout/flight';
import { layoutStair, type Note, type StairLayout } from '../layout/layoutStair';
import { failure, problem, type Result, success } from '../result';

/** What the program knows of rules and taste; data from src/packs. */
export interface RuleBook {
  readonly findPack: (id: string) => RulePack | undefined;
  readonly defaultPack: string;
  readonly tastes: readonly TasteRule[];
}

/** A stair laid out, with its sheet. */
export interface StairPlan {
  readonly layout: StairLayout;
  readonly rules: RuleSet;
  readonly sheet: PrintedSheet;
  readonly defaults: StairLayout['defaults'];
  readonly notes: readonly Note[];
}

/** @returns the plan, or what must change first; a layout that fails its own check never leaves */
export function planUnjudged(job: JobText, index: number, book: RuleBook): Result<StairPlan> {
  const pack = job.rules?.pack ?? book.defaultPack;
  const rules = chooseRules({ ...job.rules, pack }, book.findPack);
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
    notes: [...layout.value.notes, ...ruleNotes(rules.value), ...coveringNote(job, index)],
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

function ruleNotes(rules: RuleSet): Note[] {
  const notes: Note[] = [];
  if (rules.pack === null) {
    const code = rules.limits.length === 0 ? 'note.packMissing' : 'note.packMissingLocal';
    notes.push({ code, values: { pack: rules.packId } });
  }
  // A mistyped field would otherwise stand among the unchecked rules, and the amendment be without effect.
  const unknown = rules.limits.filter(
    ({ field, confidence, replaced }) => confidence === 'local' && !replaced && kindOf(field) === undefined,
  );
  for (const { field } of unknown) notes.push({ code: 'note.localUnknown', values: { field } });
  for (const { least, most } of crossedWithPack(rules.limits)) {
    const said = ({ value, unit }: Limit) => (unit === 'count' ? String(value) : `${String(value)} ${unit}`);
    const values = { least: least.field, leastValue: said(least), most: most.field, mostValue: said(most) };
    notes.push({ code: 'note.localCrossed', values });
  }
  if (rules.pack !== null && rules.profileMissing) notes.push({ code: 'note.profileMissing', values: {} });
  return notes;
}

function coveringNote(job: JobText, index: number): Note[] {
  return job.stairs[index]?.steps?.softCovering === undefined ? [] : [{ code: 'note.softCovering', values: {} }];
}

/**
 * The whole pipeline for one stair: text → job → layout → findings → sheet, checked by the second
 * road before anything is handed out. The command and the page both call this and nothing else.
 */
import type { CheckFault } from '../check/checkLayout';
import { checkLayout } from '../check/checkLayout';
import { type PrintedSheet, printedSheet } from '../check/printedSheet';
import { kindOf } from '../codes/fieldKinds';
import { type Finding, findOn, type TasteRule } from '../codes/findings';
import { USUAL_TAPE_DOUBT } from '../codes/measures';
import { chooseRules, limitFor, type RulePack, type RuleSet } from '../codes/rulePack';
import type { JobText } from '../job/jobText';
import { readStair } from '../job/readStair';
import type { LayoutLimits } from '../layout/flight';
import { layoutStair, type Note, type StairLayout } from '../layout/layoutStair';
import { failure, problem, type Result, success } from '../result';
import type { Exact } from '../units/exact';

/** What the program knows of rules and taste; data from src/packs. */
export interface RuleBook {
  readonly findPack: (id: string) => RulePack | undefined;
  readonly defaultPack: string;
  readonly tastes: readonly TasteRule[];
}

export interface StairPlan {
  readonly layout: StairLayout;
  readonly rules: RuleSet;
  readonly findings: readonly Finding[];
  readonly sheet: PrintedSheet;
  readonly defaults: StairLayout['defaults'];
  readonly notes: readonly Note[];
}

/**
 * @param tapeDoubt how far a tape reading may be out, in millimetres, or what is usual in the job's units;
 *   left out, readings count as they are and no answer is too close to call
 * @returns the plan, or what must change first; a layout that fails its own check never leaves
 */
export function planStair(
  job: JobText,
  index: number,
  book: RuleBook,
  tapeDoubt: Exact | 'usual' | null = null,
): Result<StairPlan> {
  const pack = job.rules?.pack ?? book.defaultPack;
  const rules = chooseRules({ ...job.rules, pack }, book.findPack);
  const stair = readStair(job, index);
  if (!rules.ok || !stair.ok) return failure([...problemsIn(rules), ...problemsIn(stair)]);
  const layout = layoutStair(stair.value, limitsOf(rules.value));
  if (!layout.ok) return layout;
  const doubt = tapeDoubt === 'usual' ? USUAL_TAPE_DOUBT[stair.value.units] : tapeDoubt;
  const [fault] = checkLayout(layout.value);
  if (fault !== undefined) return failure([selfCheckFailed(stair.value.place, fault)]);
  return success({
    layout: layout.value,
    rules: rules.value,
    findings: findOn(layout.value, rules.value, book.tastes, doubt),
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

/** @returns every stair's plan, or all problems of all stairs: all or nothing */
export function planJob(job: JobText, book: RuleBook): Result<readonly StairPlan[]> {
  const plans = job.stairs.map((_, index) => planStair(job, index, book));
  const problems = plans.flatMap(problemsIn);
  if (problems.length > 0) return failure(withoutRepeats(problems));
  return success(plans.flatMap((plan) => (plan.ok ? [plan.value] : [])));
}

function problemsIn<T>(result: Result<T>) {
  return result.ok ? [] : result.problems;
}

/** What is wrong with the rules or the mark step is found once for every stair. */
function withoutRepeats<T extends { place: string; code: string }>(problems: readonly T[]): T[] {
  const seen = new Set<string>();
  return problems.filter(({ place, code }) => !seen.has(`${place} ${code}`) && seen.add(`${place} ${code}`));
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
  if (rules.pack !== null && rules.profileMissing) notes.push({ code: 'note.profileMissing', values: {} });
  return notes;
}

function coveringNote(job: JobText, index: number): Note[] {
  return job.stairs[index]?.steps?.softCovering === undefined ? [] : [{ code: 'note.softCovering', values: {} }];
}

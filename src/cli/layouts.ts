/**
 * The third headless command: a job file in, and for each of its stairs every layout that survey, rules and
 * wishes allow, in order; or which limits conflict. One JSON object on standard output; what is refused goes to
 * standard error, one line a problem, and nothing to standard output.
 */
import type { JobText } from '../core/job/jobText';
import type { Result } from '../core/result';
import { findConflict } from '../core/search/conflict';
import { planFound } from '../core/search/planFound';
import { rankLayouts } from '../core/search/rank';
import { type ReadWishes, readWishes, WISH_KEYS, type WishKey, type WishTexts } from '../core/search/readWishes';
import { type Found, searchLayouts } from '../core/search/searchLayouts';
import { type Becoming, ruleText, tryOpening, tryWay } from '../core/search/tryWay';
import { askSearch, type Search } from '../core/search/wishes';
import { toMm } from '../core/units/exact';
import { openJob } from '../document/openJob';
import { BOOK, DEFAULT_PACK, loadPack } from '../packs/ruleBook';
import { type Speaker, sayProblem, speakerFor } from '../text/say';
import { problemLine, readBytes, refuse } from './jobInput';

const DEGREES = 180 / Math.PI;
/** How many are planned and written out, if nothing else is asked. */
const USUAL_FIRST = 20;

/** @returns the exit status: 0, also where there is no layout; 2 if anything was refused */
export async function main(args: readonly string[]): Promise<number> {
  const say = speakerFor('us');
  const asked = readArguments(args, say);
  if (!asked.ok) return refuse(asked.problems);
  const { path, first, texts } = asked.value;
  const content = await readBytes(path);
  if (content === null) return refuse([`job: ${say('cli.unreadable', { path })}`]);
  const job = openJob(content);
  if (!job.ok) return refuse(job.problems.map((found) => problemLine(found, say)));
  await loadPack(job.value.rules?.pack ?? DEFAULT_PACK);
  const units = job.value.units ?? 'imperial';
  const wished = readWishes(texts, units, BOOK);
  if (!wished.ok) return refuse(wished.problems.map((found) => `--${found.place}: ${sayProblem(say, found, units)}`));
  const stairs = job.value.stairs.map((_, index) => answerStair(job.value, index, wished.value, first));
  const problems = stairs.flatMap((stair) => (stair.ok ? [] : stair.problems));
  if (problems.length > 0) return refuse(problems.map((found) => problemLine(found, say, units)));
  const answer = {
    format: 'pitchboard.layouts',
    version: 1,
    name: job.value.name ?? '',
    units,
    stairs: stairs.flatMap((stair) => (stair.ok ? [stair.value] : [])),
  };
  process.stdout.write(`${JSON.stringify(answer, null, 2)}\n`);
  return 0;
}

function answerStair(job: JobText, index: number, { wishes, order }: ReadWishes, first: number): Result<object> {
  const asked = askSearch(job, index, BOOK, wishes);
  if (!asked.ok) return asked;
  const search = asked.value;
  const result = finish(searchLayouts(search));
  const ranked = finish(rankLayouts(search, result, order));
  const places = new Map(ranked.map(({ found }, at) => [found, at + 1]));
  return {
    ok: true,
    value: {
      id: search.job.id,
      name: search.job.name,
      order: order.criteria,
      looked: result.looked,
      found: result.found.length,
      layouts: ranked.slice(0, first).flatMap(({ found, beatenBy }, at) => {
        const shown = layoutAnswer(job, index, search, found);
        return shown === null ? [] : [{ place: at + 1, beatenBy: beatenBy && places.get(beatenBy), ...shown }];
      }),
      conflict: result.found.length === 0 ? conflictAnswer(job, index, search) : null,
    },
  };
}

function layoutAnswer(job: JobText, index: number, search: Search, found: Found): object | null {
  const planned = planFound(job, index, BOOK, search, found);
  if (planned === null) return null;
  const { pitch, ...figures } = planned.figures;
  return {
    top: found.top,
    stockDepth: toMm(found.depth),
    ...figures,
    pitchDegrees: pitch * DEGREES,
    cautions: planned.cautions.map(({ field, status, actual, limit, unit }) => ({
      field,
      status,
      actual,
      limit,
      unit,
    })),
    changes: Object.fromEntries(planned.keys.map(({ key, value }) => [key, value ?? null])),
  };
}

/** Null where no riser count, run, top and board leave a stringer at all. */
function conflictAnswer(job: JobText, index: number, search: Search): object | null {
  const conflict = finish(findConflict(search));
  if (conflict === null || conflict.bounds.length === 0) return null;
  const asked = { job, index, book: BOOK, search };
  const opening = tryOpening(asked, conflict);
  return {
    limits: conflict.bounds.map((at) => conflict.sifter.bounds[at]?.id),
    ways: conflict.ways.flatMap((way) => {
      const tried = tryWay(asked, conflict, way);
      if (tried === null) return [];
      const { top, risers, steps } = tried.candidate;
      const run = steps * conflict.sifter.frame.gridMm;
      return [{ becomes: tried.changes.map(becomingAnswer), top, risers, run }];
    }),
    opening: opening && { framed: toMm(opening.opening), risers: opening.candidate.risers },
  };
}

function becomingAnswer({ bound, becomes }: Becoming): object {
  const unit = bound.limit?.unit ?? 'mm';
  return { limit: bound.id, asked: bound.asked, becomes, unit, text: bound.limit && ruleText(bound, becomes) };
}

function finish<T>(steps: Generator<undefined, T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value;
  }
}

interface Asked {
  readonly path: string;
  readonly first: number;
  readonly texts: WishTexts;
}

/** Options in any order; a value is the argument after its name. */
function readArguments(args: readonly string[], say: Speaker): Result<Asked, readonly string[]> {
  const texts: Partial<Record<WishKey, string>> = {};
  const paths: string[] = [];
  const unknown: string[] = [];
  let first = USUAL_FIRST;
  for (let i = 0; i < args.length; i += 1) {
    const arg = args[i] as string;
    const wish = WISH_KEYS.find((key) => arg === `--${key}`);
    if (!arg.startsWith('--')) paths.push(arg);
    else if (wish !== undefined) texts[wish] = args[++i] ?? '';
    else if (arg === '--first') first = Number(args[++i]);
    else unknown.push(say('cli.sheets.option', { option: arg }));
  }
  if (unknown.length > 0) return { ok: false, problems: unknown };
  if (!Number.isSafeInteger(first) || first < 1) {
    return { ok: false, problems: [say('cli.sheets.value', { option: '--first', value: String(first) })] };
  }
  const [path] = paths;
  if (path === undefined || paths.length > 1) return { ok: false, problems: [say('cli.layouts.usage')] };
  return { ok: true, value: { path, first, texts } };
}

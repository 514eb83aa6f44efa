/**
 * The second headless command: a job file in; package, templates, drawings and lists out, into a
 * folder. Standard output has one line for each file; what is refused goes to standard error, and
 * then no file is written at all.
 */
import { PAPER_NAMES, type PaperName } from '../core/drawing/paper';
import type { JobText } from '../core/job/jobText';
import { type JudgedPlan, planJob } from '../core/plan/planStair';
import type { Problem, Result } from '../core/result';
import { openJob } from '../document/openJob';
import { PACKAGE_SHEETS } from '../export/sheets/sheetNames';
import {
  cutListFile,
  dxfFile,
  type ExportedFile,
  elevationDxfFile,
  elevationFile,
  marksFile,
  type PaperChoice,
  packageFile,
  patternsFile,
  type StairSource,
  stringerSvgFile,
  stripsFile,
  templatesDxfFile,
  wholeStringerFile,
} from '../export/stairFiles';
import { loadLumber } from '../packs/lumber/lumber';
import { BOOK, DEFAULT_PACK, loadPack } from '../packs/ruleBook';
import { type Speaker, speakerFor, type Terms } from '../text/say';
import { problemLine, readBytes, refuse } from './jobInput';
import { type NamedFile, writeFiles } from './writeFiles';

interface Asked {
  readonly path: string;
  readonly out: string;
  /** Of the trade, on the sheets; what the command itself says stays as it is. */
  readonly words: Terms;
  readonly choice: Omit<PaperChoice, 'paper'> & { readonly paper: PaperName | null };
}

/** @returns the exit status: 0, or 2 if anything was refused */
export async function main(args: readonly string[]): Promise<number> {
  const say = speakerFor('us');
  const asked = readArguments(args, say);
  if (!asked.ok) return refuse(asked.problems);
  const { path, out, words, choice } = asked.value;
  const content = await readBytes(path);
  if (content === null) return refuse([`job: ${say('cli.unreadable', { path })}`]);
  const job = openJob(content);
  if (!job.ok) return refuse(job.problems.map((found) => problemLine(found, say)));
  await loadPack(job.value.rules?.pack ?? DEFAULT_PACK);
  const units = job.value.units ?? 'imperial';
  const plans = planJob(job.value, BOOK);
  if (!plans.ok) return refuse(plans.problems.map((found) => problemLine(found, say, units)));
  const paper = choice.paper ?? (units === 'metric' ? 'a4' : 'letter');
  const files = await filesOf(job.value, plans.value, { ...choice, paper }, speakerFor(words));
  if (!files.ok) return refuse(files.problems.map((found) => problemLine(found, say, units)));
  const named = namedApart(files.value);
  if (!(await writeFiles(named, out))) return refuse([say('cli.sheets.folder', { path: out })]);
  process.stdout.write(named.map(({ name }) => `${name}\n`).join(''));
  return 0;
}

/** All or nothing: half a package is a package without its cautions. */
async function filesOf(
  job: JobText,
  plans: readonly JudgedPlan[],
  choice: PaperChoice,
  say: Speaker,
): Promise<Result<readonly ExportedFile[]>> {
  const files: ExportedFile[] = [];
  const problems: Problem[] = [];
  for (const plan of plans) {
    for (const file of await stairFiles({ job, plan, say }, choice)) {
      if (file.ok) files.push(file.value);
      else problems.push(...file.problems);
    }
  }
  return problems.length > 0 ? { ok: false, problems: firstOfEach(problems) } : { ok: true, value: files };
}

async function stairFiles(source: StairSource, choice: PaperChoice): Promise<readonly Result<ExportedFile>[]> {
  const lumber = await loadLumber();
  return Promise.all([
    packageFile(source, { ...choice, sheets: PACKAGE_SHEETS, lumber }),
    patternsFile(source, choice),
    stripsFile(source, choice),
    wholeStringerFile(source, choice),
    dxfFile(source, choice),
    templatesDxfFile(source, choice),
    elevationDxfFile(source, choice),
    stringerSvgFile(source, choice),
    elevationFile(source, choice),
    cutListFile(source, choice),
    marksFile(source, choice),
  ]);
}

/** Every file of a stair finds the same fault. */
function firstOfEach(problems: readonly Problem[]): readonly Problem[] {
  return problems.filter(
    ({ place, code }, index) => problems.findIndex((one) => one.place === place && one.code === code) === index,
  );
}

/** Two stairs of one name do not write over each other. */
function namedApart(files: readonly ExportedFile[]): readonly NamedFile[] {
  const used = new Set<string>();
  return files.map(({ name, content }) => {
    let free = name;
    for (let copy = 2; used.has(free.toLowerCase()); copy += 1) free = `${copy}-${name}`;
    used.add(free.toLowerCase());
    return { name: free, content };
  });
}

/** Options in any order; a value is the argument after its name. */
function readArguments(args: readonly string[], say: Speaker): Result<Asked, readonly string[]> {
  const options = new Map<string, string>();
  const paths: string[] = [];
  const problems: string[] = [];
  for (let i = 0; i < args.length; i += 1) {
    const arg = args[i] as string;
    if (!arg.startsWith('--')) paths.push(arg);
    else if (!OPTIONS.includes(arg)) problems.push(say('cli.sheets.option', { option: arg }));
    else options.set(arg, args[++i] ?? '');
  }
  const [path] = paths;
  const out = options.get('--out');
  const oneOf = <T extends string>(name: string, known: readonly T[]): T | null => {
    const value = options.get(name);
    if (value === undefined) return null;
    const found = known.find((one) => one === value) ?? null;
    if (found === null) problems.push(say('cli.sheets.value', { option: name, value }));
    return found;
  };
  const factor = (name: string): number => Number(options.get(name) ?? '1');
  const choice = {
    paper: oneOf('--paper', PAPER_NAMES),
    stringerPaper: oneOf('--stringer-paper', PAPER_NAMES) ?? 'roll36',
    hand: oneOf('--hand', ['right', 'left'] as const) ?? 'right',
    revision: options.get('--revision') ?? 'A',
    correction: { short: factor('--short'), long: factor('--long') },
  };
  const words = oneOf('--words', ['us', 'uk'] as const) ?? 'us';
  if (problems.length > 0) return { ok: false, problems };
  if (path === undefined || paths.length > 1 || out === undefined || out === '') {
    return { ok: false, problems: [say('cli.sheets.usage')] };
  }
  return { ok: true, value: { path, out, words, choice } };
}

const OPTIONS = ['--out', '--paper', '--stringer-paper', '--words', '--hand', '--revision', '--short', '--long'];

/**
 * The headless command: a job file in, its layouts out as one JSON object on standard output.
 * What is refused goes to standard error, one line a problem, and nothing to standard output.
 */
import type { JobText } from '../core/job/jobText';
import { planJob } from '../core/plan/planStair';
import { type Result, success } from '../core/result';
import { openJob } from '../document/openJob';
import { BOOK, DEFAULT_PACK, loadPack } from '../packs/ruleBook';
import { type Speaker, speakerFor } from '../text/say';
import { problemLine, readBytes, refuse } from './jobInput';
import { answerStair } from './layoutAnswer';

/**
 * @param args the command line after the script: one path
 * @returns the exit status: 0, or 2 if anything was refused
 */
export async function main(args: readonly string[]): Promise<number> {
  const say = speakerFor('us');
  const [path] = args;
  if (args.length !== 1 || path === undefined) return refuse([say('cli.usage')]);
  const content = await readBytes(path);
  if (content === null) return refuse([`job: ${say('cli.unreadable', { path })}`]);
  const job = openJob(content);
  if (job.ok) await loadPack(job.value.rules?.pack ?? DEFAULT_PACK);
  const answer = answerRead(job, say);
  if (!answer.ok) return refuse(answer.problems);
  process.stdout.write(`${JSON.stringify(answer.value, null, 2)}\n`);
  return 0;
}

/**
 * The same for content at hand, with the packs that are loaded already.
 * @returns the answer object, or the lines that say why there is none
 */
export function answerJob(content: Uint8Array | string, say: Speaker): Result<object, readonly string[]> {
  return answerRead(openJob(content), say);
}

function answerRead(job: Result<JobText>, say: Speaker): Result<object, readonly string[]> {
  if (!job.ok) return { ok: false, problems: job.problems.map((found) => problemLine(found, say)) };
  const units = job.value.units ?? 'imperial';
  const plans = planJob(job.value, BOOK);
  if (!plans.ok) return { ok: false, problems: plans.problems.map((found) => problemLine(found, say, units)) };
  return success({
    format: 'pitchboard.layout',
    version: 1,
    name: job.value.name ?? '',
    units,
    stairs: plans.value.map((plan) => answerStair(plan, say)),
  });
}

/** Comparisons for loops of many thousands: a message only when something is wrong. */
import fc from 'fast-check';
import { answerStair } from '../../src/cli/layoutAnswer';
import type { JudgedPlan } from '../../src/core/plan/planStair';
import { planStair } from '../../src/core/plan/planStair';
import { speakerFor } from '../../src/text/say';
import { BOOK, type StairAnswer } from '../fixtures/stairs';
import { jobOf, type RandomStair } from './randomStairs';

const say = speakerFor('us');

export function near(found: number, expected: number, what: string, within = 1e-6): void {
  // Written so that NaN fails.
  if (!(Math.abs(found - expected) <= within)) throw new Error(`${what}: ${found}, not ${expected}`);
}

export function holds(condition: boolean, what: string): void {
  if (!condition) throw new Error(what);
}

export function nearAll(found: readonly number[], expected: readonly number[], what: string, within = 1e-6): void {
  holds(found.length === expected.length, `${what}: ${found.length} of them, not ${expected.length}`);
  for (const [i, value] of found.entries()) near(value, expected[i] as number, `${what} ${i}`, within);
}

/** The plan of a stair that has one; a stair without geometry is passed over, a failed self-check is not. */
export function planned(stair: RandomStair): JudgedPlan {
  const plan = planStair(jobOf(stair), 0, BOOK);
  if (!plan.ok) {
    const codes = plan.problems.map(({ place, code }) => `${place} ${code}`).join(', ');
    holds(!codes.includes('check.failed'), `refused by its own check: ${JSON.stringify(plan.problems)}`);
    holds(GEOMETRY.test(codes), `refused as if the text were wrong: ${codes}`);
  }
  fc.pre(plan.ok);
  return (plan as { value: JudgedPlan }).value;
}

export function answered(stair: RandomStair): StairAnswer {
  return answerStair(planned(stair), say);
}

const GEOMETRY =
  /rise\.notPositive|run\.notPositive|nosing\.tooDeep|riserBoard\.tooThick|topTread\.outside|toe\.none|throat\.none|seat\.none|plumbCut\.none|heel\.behindEnd|kicker\.too(High|Wide)/;

/** Every number anywhere in the answer is one: no NaN, nothing infinite, nothing left out. */
export function allFinite(value: unknown, at: string): void {
  if (typeof value === 'number') holds(Number.isFinite(value), `${at} is ${value}`);
  else if (value === undefined) throw new Error(`${at} is not said`);
  else if (value !== null && typeof value === 'object') {
    for (const [key, inner] of Object.entries(value)) allFinite(inner, `${at}.${key}`);
  }
}

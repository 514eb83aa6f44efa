import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answerStair } from '../../src/cli/layoutAnswer';
import { planStair } from '../../src/core/plan/planStair';
import { speakerFor } from '../../src/text/say';
import { BOOK } from '../fixtures/stairs';
import { holds, near, nearAll } from './measure';
import { jobOf, type RandomStair, randomStair, writeLength } from './randomStairs';
import { secondStair } from './secondStair';

const say = speakerFor('us');
const HEADROOM = 80 * 25.4;

/** Both calculations of one stair, number by number. @returns whether there was a stair to compare */
function agree(stair: RandomStair): boolean {
  const second = secondStair(stair, HEADROOM);
  const plan = planStair(jobOf(stair), 0, BOOK);
  if (second.margin > 1e-5)
    holds(plan.ok === second.possible, `${plan.ok ? 'laid out' : 'refused'}, against the second calculation`);
  if (!plan.ok) return false;
  const answer = answerStair(plan.value, say) as unknown as Record<string, unknown>;
  const width = plan.value.layout.width;
  const across: Record<string, unknown> = width
    ? {
        'width.finished': width.finished,
        'width.betweenSkirts': width.betweenSkirts,
        'width.treadLength': width.treadLength,
        'width.between': width.spacing * (width.stringers - 1),
      }
    : {};
  for (const [key, expected] of Object.entries(second.numbers)) {
    if (key.startsWith('width.') && width === null) continue;
    const found = key.startsWith('width.') ? across[key] : answer[key];
    if (expected === null) holds(found === null, `${key} is ${String(found)}, not null`);
    else if (typeof expected === 'number') near(found as number, expected, key);
    else nearAll(found as number[], expected as number[], key);
  }
  const outline = answer['outline'] as [number, number][];
  nearAll(
    outline.flat(),
    second.outline.flatMap(({ x, z }) => [x, z]),
    'outline',
  );
  return true;
}

test('a second calculation from points alone agrees to a nanometre, 2,000 stairs', () => {
  let laidOut = 0;
  fc.assert(
    fc.property(randomStair, (stair) => {
      if (agree(stair)) laidOut += 1;
    }),
    { numRuns: 2_000 },
  );
  // Most of them have to be stairs, or this compares refusals.
  expect(laidOut).toBeGreaterThan(1_200);
}, 60_000);

test('one stair is the same stair in every notation, 20 turns of all of them', () => {
  fc.assert(
    fc.property(randomStair, (stair) => {
      for (let notation = 0; notation < 20; notation += 1) agree({ ...stair, notation });
    }),
    { numRuns: 100 },
  );
}, 60_000);

test('the notations differ from each other', () => {
  const written = Array.from({ length: 84 }, (_, turn) => writeLength(107.625 * 25_400_000, turn));
  expect(new Set(written).size).toBe(11);
});

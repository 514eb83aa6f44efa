/**
 * The check must not refuse what can be built: a steep or short flight turns further under rounded
 * marks than an ordinary one, and no rule of the program forbids it. A full sweep, not a sample.
 */
import { expect, test } from 'vitest';
import { planStair } from '../../../src/core/plan/planStair';
import { BOOK } from '../../fixtures/stairs';

const TOPS = ['header-behind-riser', 'hanger-is-riser', 'hanger-behind-riser', 'level-with-floor'] as const;
const STEPS = ['1/2 in', '1/4 in', '1/16 in', '0.001 mm'];

function planFor(risers: number, run: number, unitRise: number, top: (typeof TOPS)[number], markStep: string) {
  return planStair(
    {
      format: 'pitchboard.job',
      version: 1,
      markStep,
      stairs: [
        {
          id: 'steep',
          survey: { rise: `${(risers * unitRise).toFixed(3)} in`, lowerToAdd: '0 in', upperToAdd: '3/4 in' },
          steps: { risers, run: `${run} in`, nosing: '0 in', treadThickness: '1 in', riserThickness: '1/2 in' },
          stringer: { top, stockDepth: '14 1/16 in' },
        },
      ],
    },
    0,
    BOOK,
  );
}

test.each(TOPS)('%s: from shallow to ladder-steep, fine marks and coarse', (top) => {
  let laidOut = 0;
  for (const risers of [2, 3, 8, 15])
    for (const run of [5.03125, 7.25, 10, 13.5])
      for (const unitRise of [4.1, 6.37, 8.21, 10.97, 12.19])
        for (const step of STEPS) {
          const plan = planFor(risers, run, unitRise, top, step);
          if (plan.ok) laidOut += 1;
          else expect(plan.problems.map(({ code }) => code)).not.toContain('check.failed');
        }
  // Most of the sweep has to be stairs, or nothing is checked here.
  expect(laidOut).toBeGreaterThan(150);
});

test('marks coarser than half an inch are refused, not checked against a board they cannot describe', () => {
  const plan = planFor(8, 10, 7.5, 'hanger-is-riser', '20 in');
  expect(plan.ok ? [] : plan.problems.map(({ place, code }) => `${place} ${code}`)).toEqual([
    'markStep markStep.tooCoarse',
  ]);
});

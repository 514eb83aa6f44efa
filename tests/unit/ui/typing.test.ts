import { describe, expect, it } from 'vitest';
import type { JobText } from '../../../src/core/job/jobText';
import { moveStair, removeStair } from '../../../src/state/stairs';
import { createTypingDesk, fingerprint, type TypingEntry } from '../../../src/ui/fields/typing';

const job: JobText = {
  format: 'pitchboard.job',
  version: 1,
  stairs: [
    { id: 'cellar', survey: { rise: '100 in' } },
    { id: 'loft', survey: { rise: '105 in' } },
  ],
};

function typedBeside(value: string): TypingEntry {
  return {
    typed: { text: '8.10' },
    beside: fingerprint(value),
    judge: () => ({ kind: 'refused', problems: [] }),
    waits: false,
  };
}

describe('text that is not in use yet', () => {
  it('goes with its stair when the stair is moved, and outlives the look at the job after it', () => {
    const desk = createTypingDesk();
    desk.set('stairs[0].survey.rise', typedBeside('100 in'));
    desk.set('name', typedBeside('none'));
    desk.moveStairs((index) => 1 - index);
    desk.prune({ ...moveStair(job, 0, 1), name: 'none' });
    expect([...desk.all().keys()]).toEqual(['stairs[1].survey.rise', 'name']);
  });

  it('is no length of other units: what is in use gives way to the job’s own text, what is not stays', () => {
    const desk = createTypingDesk();
    desk.set('stairs[0].survey.rise', { ...typedBeside('100 in'), inUnits: 'imperial' });
    desk.set('stairs[1].survey.rise', typedBeside('105 in'));
    desk.prune(job);
    expect(desk.all().size).toBe(2);
    desk.prune({ ...job, units: 'metric' });
    expect([...desk.all().keys()]).toEqual(['stairs[1].survey.rise']);
  });

  it('goes with the stair when that is taken out, and the next one moves up with its own', () => {
    const desk = createTypingDesk();
    desk.set('stairs[0].survey.rise', typedBeside('100 in'));
    desk.set('stairs[1].survey.rise', typedBeside('105 in'));
    desk.moveStairs((index) => (index === 0 ? null : index - 1));
    desk.prune(removeStair(job, 0));
    expect([...desk.all()].map(([place, { beside }]) => [place, beside])).toEqual([
      ['stairs[0].survey.rise', fingerprint('105 in')],
    ]);
  });
});

import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { main } from '../../src/cli/layouts';
import { answerOf, changed, LOFT } from '../fixtures/stairs';
import { commandBench } from './runCommand';

const { folder, run, jobFile } = commandBench(main);

describe('the layouts command', () => {
  it('gives each layout with the figures that the layout command has for it', async () => {
    const long = changed(LOFT, { survey: { openingFraming: '128 in' } });
    const done = await run(jobFile('loft.json', long), '--by', 'stride,headroom', '--first', '3');
    expect(done).toMatchObject({ status: 0, err: '' });
    const { format, stairs } = JSON.parse(done.out);
    expect(format).toBe('pitchboard.layouts');
    const [stair] = stairs;
    expect(stair).toMatchObject({ id: 'loft', order: ['stride', 'headroom'], conflict: null });
    expect(stair.looked).toBeGreaterThan(6000);
    expect(stair.layouts).toHaveLength(Math.min(3, stair.found));
    const [best] = stair.layouts;
    const { risers, run: runMm } = best;
    const answer = answerOf(changed(long, { steps: { risers, run: `${runMm} mm` }, stringer: { top: best.top } }));
    for (const name of ['unitRise', 'totalRun', 'headroom', 'openingNeeded', 'throat', 'boardLength'] as const) {
      expect(best[name]).toBeCloseTo(answer[name] as number, 9);
    }
    expect(best.twoRisePlusRun).toBeCloseTo(answer.twoRisePlusRun, 9);
    expect(best.pitchDegrees).toBeCloseTo(answer.pitchDegrees, 9);
    expect(best.headerContact).toBeCloseTo(answer.headerContact as number, 9);
  });

  it('says which limits conflict where there is none', async () => {
    const short = changed(LOFT, { survey: { openingFraming: '110 in' } });
    const { status, out } = await run(jobFile('short.json', short), '--run', '131 in');
    const [stair] = JSON.parse(out).stairs;
    expect(status).toBe(0);
    expect(stair).toMatchObject({ found: 0, layouts: [] });
    expect(stair.conflict.limits).toContain('headroom.min');
    expect(stair.conflict.ways).toHaveLength(stair.conflict.limits.length);
    expect(stair.conflict.opening.framed / 25.4).toBeGreaterThan(110);
  });

  it('refuses what it cannot read, with nothing on standard output', async () => {
    const path = jobFile('job.json', LOFT);
    for (const [args, says] of [
      [[path, '--run', '131'], '--run: "131" has no unit'],
      [[path, '--by', 'price'], '--by: "price" is not known here'],
      [[path, '--first', '0'], 'not accepted for --first'],
      [[path, '--best', '1'], '"--best" is not known here'],
      [[path, path], 'usage: npm run --silent layouts'],
      [[join(folder, 'nothing.json')], 'cannot be read'],
      [[jobFile('torn.json', '{')], 'job: '],
      [[jobFile('down.json', changed(LOFT, { survey: { lowerToAdd: '200 in' } }))], 'stairs[0].survey.rise: '],
    ] as const) {
      const done = await run(...args);
      expect(done).toMatchObject({ status: 2, out: '' });
      expect(done.err).toContain(says);
    }
  });
});

/**
 * What a carpenter takes to the saw, as text files to be read and checked by one. They are compared
 * here and written only on demand (`npm run golden`), by a person who looks at what moved.
 * The stairs are worked examples of our own, not published.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import type { JobText } from '../../src/core/job/jobText';
import type { JudgedPlan } from '../../src/core/plan/planStair';
import { type Exact, fraction, inch } from '../../src/core/units/exact';
import { formatFeet, formatLength, tapeNumber, tapeText } from '../../src/core/units/format';
import type { Rounding } from '../../src/core/units/rounding';
import { changed, DECK, LOFT, planOf, SLAB } from '../fixtures/stairs';

const writing = process.env['PITCHBOARD_GOLDEN'] === 'write';

const STAIRS: Readonly<Record<string, JobText>> = {
  loft: LOFT,
  'loft-level-with-floor': changed(LOFT, {
    stringer: { top: 'level-with-floor', hanger: undefined, topTreadRun: '3 1/2 in' },
  }),
  deck: DECK,
  slab: SLAB,
};

/** Lengths as the job's own tape reads them. */
function tape({ layout }: JudgedPlan) {
  const { units, markStep } = layout.job;
  const rips: Exact = units === 'metric' ? fraction(1n, 1n) : inch(1 / 16);
  const at = (mm: number, step: Exact, rounding: Rounding) =>
    units === 'metric'
      ? formatLength(mm, step, 'metric', rounding).replace(' mm', '')
      : tapeText(tapeNumber(mm, step, rounding));
  return {
    mark: (mm: number) => at(mm, markStep, 'nearest'),
    rip: (mm: number) => at(mm, rips, 'down'),
    exact: (mm: number) => (units === 'metric' ? mm.toFixed(2) : (mm / 25.4).toFixed(4)),
    long: (mm: number) => (units === 'metric' ? `${formatLength(mm, markStep, 'metric')}` : formatFeet(mm, markStep)),
    unit: units === 'metric' ? 'mm' : 'in',
  };
}

function page(name: string, plan: JudgedPlan): string {
  const { layout, sheet } = plan;
  const { flight, stringer, rips } = layout;
  const { mark, rip, exact, long, unit } = tape(plan);
  const row = (label: string, shown: string, mm: number) =>
    `${label.padEnd(44)}${shown.padStart(12)}${exact(mm).padStart(14)}`;
  const maybe = (label: string, mm: number | null) => (mm === null ? [] : [row(label, rip(mm), mm)]);
  const marks = stringer.marks.map((along, i) => {
    const corner = stringer.cornerMarks[i];
    const level = (flight.finishedTops[i + 1] as number) - flight.treadThickness - flight.seatHeight;
    return [
      String(i + 1).padStart(3),
      mark(stringer.firstMark + along).padStart(12),
      (corner === undefined ? '(end)' : mark(stringer.firstMark + corner)).padStart(12),
      mark(level).padStart(14),
      mark(flight.finishedTops[i + 1] as number).padStart(14),
      exact(stringer.asCut.risers[i] as number).padStart(12),
    ].join('');
  });
  return [
    `${layout.job.name}: ${name}`,
    `Lengths (${unit}) are shown to the mark step, and exact. Worked example of our own, not published.`,
    '',
    row('total rise', long(flight.totalRise), flight.totalRise),
    row(`unit rise, ${flight.risers} risers`, mark(flight.unitRise), flight.unitRise),
    row('run', mark(flight.run), flight.run),
    row('toe height (first plumb cut)', mark(stringer.heel.firstRiserCut), stringer.heel.firstRiserCut),
    row('drop', mark(stringer.heel.drop), stringer.heel.drop),
    row('seat', mark(stringer.heel.seat), stringer.heel.seat),
    row('gauge line from the edge', mark(stringer.gaugeLine), stringer.gaugeLine),
    row('throat', mark(stringer.throat), stringer.throat),
    row('last level cut', mark(stringer.top.lastLevelCut), stringer.top.lastLevelCut),
    row('plumb cut', mark(stringer.top.plumbCut), stringer.top.plumbCut),
    row('header mark, below the subfloor', mark(stringer.top.topBelowSubfloor), stringer.top.topBelowSubfloor),
    row('toe mark, out from the header', mark(sheet.toeMark), stringer.top.headerX - flight.riserThickness),
    row('riser 1, out from the header', mark(sheet.riserMark), stringer.top.headerX),
    row('nosing 1, out from the header', mark(sheet.nosingMark), stringer.top.headerX + flight.nosing),
    row('toe to top, straight across', mark(stringer.diagonal), stringer.diagonal),
    row('board, net', long(stringer.boardLength), stringer.boardLength),
    stringer.stockLength === null
      ? 'no board is long enough'
      : row('board to buy', long(stringer.stockLength), stringer.stockLength),
    '',
    'Marks from the end of the board: tips along the edge, corners along the gauge line;',
    'level cuts above what the stringer stands on, treads above the finished floor; the riser that the rounded marks give.',
    `${'no.'.padStart(3)}${'tip'.padStart(12)}${'corner'.padStart(12)}${'level cut'.padStart(14)}${'tread top'.padStart(14)}${'riser'.padStart(12)}`,
    ...marks,
    ...(stringer.asCut.risers.length > marks.length
      ? [
          `${String(flight.risers).padStart(3)}${''.padStart(52)}${exact(stringer.asCut.risers.at(-1) as number).padStart(12)}`,
        ]
      : []),
    `spread of the risers${exact(stringer.asCut.spread).padStart(47)}`,
    '',
    'Rips, rounded down.',
    row(`treads, ${flight.treads}`, rip(rips.treadDepth), rips.treadDepth),
    ...(rips.lastTreadDepth === rips.treadDepth
      ? []
      : [row('the last of them', rip(rips.lastTreadDepth), rips.lastTreadDepth)]),
    ...maybe('riser board 1', rips.riserHeights[0] ?? null),
    ...maybe(`riser boards 2 to ${rips.riserHeights.length}`, rips.riserHeights[1] ?? null),
    ...maybe('top riser board', rips.topRiserBoard),
    ...maybe('hanger board', rips.hangerHeight),
    '',
  ].join('\n');
}

test.each(Object.entries(STAIRS))('%s', (name, job) => {
  const file = fileURLToPath(new URL(`./${name}.txt`, import.meta.url));
  const text = page(name, planOf(job));
  if (writing) writeFileSync(file, text);
  expect(existsSync(file), `there is no ${name}.txt yet: look at the numbers, then write it with npm run golden`).toBe(
    true,
  );
  expect(text).toBe(readFileSync(file, 'utf8'));
});

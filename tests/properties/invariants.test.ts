import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answerStair } from '../../src/cli/layoutAnswer';
import { checkLayout } from '../../src/core/check/checkLayout';
import { exactSheet, printedSheet } from '../../src/core/check/printedSheet';
import type { JudgedPlan } from '../../src/core/plan/planStair';
import { speakerFor } from '../../src/text/say';
import { allFinite, holds, near, planned } from './measure';
import { randomStair } from './randomStairs';

const say = speakerFor('us');

/** Riser by riser, from one finished floor to the other. */
function risersAddUp({ layout }: JudgedPlan): void {
  const { flight, stringer } = layout;
  const tops = flight.finishedTops;
  const sum = tops.slice(1).reduce((total, top, i) => total + (top - (tops[i] as number)), 0);
  near(sum, flight.totalRise, 'sum of the risers');
  near(tops.at(-1) as number, flight.totalRise, 'the upper floor');
  near(stringer.heel.firstRiserCut + flight.treadThickness + flight.seatHeight, flight.unitRise, 'riser 1');
  near(stringer.heel.drop, flight.treadThickness + flight.seatHeight, 'drop');
  near(flight.totalRise - (flight.risers - 1) * flight.unitRise, flight.unitRise, 'the last riser');
}

/** Points on the board: every step U, corners on one line, the heel on the lower edge. */
function pointsOnBoard({ layout }: JudgedPlan): void {
  const { flight, stringer } = layout;
  const { marks, cornerMarks, heel, top } = stringer;
  for (let i = 1; i < marks.length; i += 1)
    near((marks[i] as number) - (marks[i - 1] as number), flight.stepLength, `step ${i}`);
  for (const [i, corner] of cornerMarks.entries())
    near(corner - (marks[i] as number), flight.run * flight.cos, `corner ${i}`);
  const into = (x: number, y: number) =>
    (x - flight.riserThickness) * flight.sin -
    (y - flight.unitRise + flight.treadThickness) * flight.cos +
    stringer.tipInset;
  near(into(heel.heelX, flight.seatHeight), stringer.stockDepth, 'the heel');
  near(into(top.endX, top.topY - top.plumbCut), stringer.stockDepth, 'the plumb end');
  for (let i = 1; i <= flight.treads; i += 1) {
    near(
      into(i * flight.run + flight.riserThickness, i * flight.unitRise - flight.treadThickness),
      stringer.gaugeLine,
      `gauge line ${i}`,
      1e-5,
    );
  }
  near(stringer.throat + stringer.gaugeLine, stringer.stockDepth, 'throat and gauge line');
  if (top.hung && layout.job.stringer.top !== 'hanger-is-riser')
    near(top.plumbCut * flight.cos, stringer.throat, 'P cos θ');
  holds(
    stringer.throat > 0 && heel.firstRiserCut > 0 && heel.seat > 0 && top.plumbCut > 0,
    'something is left everywhere',
  );
  near(
    stringer.firstMark + stringer.endMark + stringer.trim,
    stringer.boardLength + 2 * stringer.trim,
    'board length',
    1e-5,
  );
  near(Math.hypot(top.endX - flight.riserThickness, top.topY - flight.seatHeight), stringer.diagonal, 'diagonal');
}

/** Rounded once each: no mark is off by more than half a step, no rip is long. */
function roundedOnce({ layout, sheet }: JudgedPlan): void {
  const exact = exactSheet(layout);
  const half = sheet.step / 2 + 1e-6;
  for (const row of ['tips', 'corners'] as const) {
    for (const [i, mark] of exact[row].entries()) near(sheet[row][i] as number, mark, `${row} ${i} as printed`, half);
  }
  for (const one of [
    'toeHeight',
    'headerMark',
    'gaugeLine',
    'toeMark',
    'riserMark',
    'nosingMark',
    'diagonal',
    'end',
    'endDepth',
  ] as const) {
    near(sheet[one], exact[one], `${one} as printed`, half);
  }
  for (const [i, rip] of exact.riserRips.entries()) {
    const sawn = sheet.riserRips[i] as number;
    holds(sawn <= rip + 1e-6 && rip - sawn <= sheet.ripStep + 1e-6, `riser board ${i} as printed: ${sawn} for ${rip}`);
  }
}

/**
 * Cut to the rounded marks. The first riser is off by the toe's rounding, half a step; one in the body
 * by two ticks, half a step each, × sin θ. The last one of a hung stair takes what is left of both.
 */
function asCutForecast({ layout }: JudgedPlan): void {
  const { flight, stringer } = layout;
  const { risers, step, spread } = stringer.asCut;
  const hung = flight.treads < flight.risers;
  holds(risers.length === flight.risers, 'a riser is missing');
  for (const [i, riser] of risers.entries()) {
    const last = hung && i === risers.length - 1;
    const steps = i === 0 ? 1 / 2 : last ? 1 / 2 + flight.sin : flight.sin;
    near(riser, flight.unitRise, `riser ${i + 1} as cut`, step * steps + 1e-6);
  }
  const sum = risers.reduce((a, b) => a + b, 0);
  near(sum, flight.totalRise, 'sum as cut', hung ? 1e-5 : step * (1 / 2 + flight.sin) + 1e-5);
  near(spread, Math.max(...risers) - Math.min(...risers), 'spread');
}

const seen = new Map<string, number>();
function count(plan: JudgedPlan): void {
  const { job, flight, stringer } = plan.layout;
  const laid = job.survey.lowerLaid;
  const signs = [flight.lowerToAdd < 0, flight.upperToAdd < 0, flight.riserThickness === 0, stringer.tipInset > 0];
  const features = [
    job.units,
    job.stringer.top,
    job.steps.joint,
    laid,
    `kicker ${stringer.kicker !== null}`,
    ...signs.map((is, i) => `${i} ${is}`),
  ];
  const kind = `${job.units} ${job.stringer.top} ${job.steps.joint} ${stringer.kicker !== null} ${laid}`;
  for (const feature of [...features, kind]) seen.set(feature, (seen.get(feature) ?? 0) + 1);
}

test('10,000 stairs: laid out without a fault, every number a number, and everything adds up', () => {
  fc.assert(
    fc.property(randomStair, (stair) => {
      const plan = planned(stair);
      allFinite(answerStair(plan, say), 'stair');
      allFinite(printedSheet(plan.layout), 'sheet');
      risersAddUp(plan);
      pointsOnBoard(plan);
      roundedOnce(plan);
      asCutForecast(plan);
      count(plan);
    }),
    { numRuns: 10_000 },
  );
  // 2 unit systems × 4 tops × 2 joints × kicker or none × lower floor laid before or after, and what can be signed or left out.
  expect(seen.size).toBe(2 + 4 + 2 + 2 + 2 + 2 * 4 + 64);
  expect(Math.min(...seen.values())).toBeGreaterThan(20);
}, 120_000);

test('the check of a laid out stair finds nothing, on its own call too', () => {
  fc.assert(
    fc.property(randomStair, (stair) => {
      const faults = checkLayout(planned(stair).layout);
      holds(faults.length === 0, JSON.stringify(faults));
    }),
    { numRuns: 500 },
  );
}, 60_000);

import { describe, expect, test } from 'vitest';
import type { StringerText } from '../../../src/core/job/jobText';
import { answerOf, changed, inInches, LOFT, planOf, type StairAnswer } from '../../fixtures/stairs';

/** One stair, every top. Worked example of our own, not published: inches to four places. */
const TOPS: Readonly<Record<string, StringerText>> = {
  'hanger is the riser': {},
  'header behind the riser': { top: 'header-behind-riser', hanger: '0 in' },
  'hanger behind the riser': { top: 'hanger-behind-riser', hanger: '3/4 in' },
  'level with the floor, full tread': { top: 'level-with-floor', hanger: undefined },
  'level with the floor, short tread': { top: 'level-with-floor', hanger: undefined, topTreadRun: '3 1/2 in' },
};

const NAMES = Object.keys(TOPS);

const TABLE: readonly (readonly [string, (answer: StairAnswer) => number | null, readonly number[]])[] = [
  ['stringer end', (a) => a.stringerEnd, [130, 130.75, 130.75, 140.75, 134.25]],
  ['header face', (a) => a.headerFace, [130.75, 130.75, 131.5, 140.75, 134.25]],
  ['last level cut', (a) => a.lastLevelCut, [9.25, 10, 10, 10, 3.5]],
  ['last level cut over the floor', (a) => a.totalRise - a.topBelowFinish, [96.9598, 96.9598, 96.9598, 104.5, 104.5]],
  ['below the finished floor', (a) => a.topBelowFinish, [8.6027, 8.6027, 8.6027, 1.0625, 1.0625]],
  ['below the subfloor', (a) => a.topBelowSubfloor, [7.8527, 7.8527, 7.8527, 0.3125, 0.3125]],
  ['plumb cut', (a) => a.plumbCut, [7.115, 6.5495, 6.5495, 6.5495, 11.4506]],
  ['header contact', (a) => a.headerContact, [4.1473, 4.1473, 4.1473, 6.112, 11.0131]],
  ['header depth needed', (a) => a.headerDepthNeeded, [14.2177, 13.6522, 13.6522, 6.112, 11.0131]],
  ['board length', (a) => a.boardLength, [161.9517, 162.5505, 162.5505, 175.0747, 169.8847]],
  ['first cut', (a) => a.firstRiserCut, [7.1027, 7.1027, 7.1027, 7.1027, 7.1027]],
  ['seat', (a) => a.seat, [9.2663, 9.2663, 9.2663, 9.2663, 9.2663]],
];

describe.each(NAMES.map((name, column) => [name, column] as const))('%s', (name, column) => {
  const job = changed(LOFT, { stringer: TOPS[name] as StringerText });
  const answer = answerOf(job);

  test.each(TABLE)('%s', (_, measure, expected) => {
    // The table keeps four places, so half of the last one is what it can be off by.
    expect(Math.abs(inInches(measure(answer)) - (expected[column] as number))).toBeLessThan(0.00005 + 1e-9);
  });

  test('treads and their marks', () => {
    const level = name.startsWith('level');
    expect(answer.treads).toBe(level ? 14 : 13);
    expect(answer.marks).toHaveLength(answer.treads);
    expect(answer.cornerMarks).toHaveLength(answer.treads - 1);
    expect(answer.riserHeights).toHaveLength(answer.treads);
    expect(inInches(answer.totalRun)).toBeCloseTo(level ? inInches(answer.stringerEnd) : 130, 9);
  });

  test('the top of the plumb end on the board', () => {
    const { stringer } = planOf(job).layout;
    const ends = [157.6755, 158.2744, 158.2744, 170.7985, 165.6085];
    expect(Math.abs(stringer.endMark / 25.4 - (ends[column] as number))).toBeLessThan(0.0001);
  });
});

describe('riser and hanger', () => {
  test('a hanger behind the riser moves the header and the hanger, and nothing that is cut for the stringer', () => {
    const {
      headerFace: a,
      hangerHeight: b,
      headroom: c,
      openingNeeded: d,
      defaults: _e,
      ...plain
    } = answerOf(changed(LOFT, { stringer: TOPS['header behind the riser'] as StringerText }));
    const {
      headerFace: f,
      hangerHeight: g,
      headroom: h,
      openingNeeded: i,
      defaults: _j,
      findings: _k,
      ...hung
    } = answerOf(changed(LOFT, { stringer: TOPS['hanger behind the riser'] as StringerText }));
    const { findings: _l, ...rest } = plain;
    expect(hung).toEqual(rest);
    expect(inInches(f) - inInches(a)).toBeCloseTo(0.75, 12);
    expect([b, g === null]).toEqual([null, false]);
    // The opening is measured from the header, which now stands further back.
    expect(inInches(i) - inInches(d)).toBeCloseTo(0.75, 12);
    expect(c).not.toBe(h);
  });

  test('any hanger thickness goes into the header mark', () => {
    const thick = answerOf(changed(LOFT, { stringer: { hanger: '1 1/2 in' } }));
    expect(inInches(thick.headerFace)).toBeCloseTo(131.5, 12);
    expect(thick.stringerEnd).toBe(answerOf(LOFT).stringerEnd);
  });

  test('a board between a level stringer and the header moves the header', () => {
    const level = answerOf(changed(LOFT, { stringer: { top: 'level-with-floor', hanger: '3/4 in' } }));
    expect(inInches(level.headerFace)).toBeCloseTo(141.5, 12);
    expect(level.hangerHeight).toBeNull();
  });
});

describe('how much of the plumb cut bears', () => {
  test.each([
    ['20 in', 7.115],
    ['14 7/32 in', 7.115],
    ['11 1/4 in', 4.1473],
    ['9 1/4 in', 2.1473],
    ['7 1/4 in', 0.1473],
    ['7 in', -0.1027],
    ['3 1/2 in', -3.6027],
  ])('a header %s deep', (headerDepth, contact) => {
    expect(
      Math.abs(inInches(answerOf(changed(LOFT, { survey: { headerDepth } })).headerContact) - contact),
    ).toBeLessThan(0.0001);
  });

  test('a level stringer that stands above the header top bears from that top down', () => {
    const level = answerOf(changed(LOFT, { stringer: TOPS['level with the floor, full tread'] as StringerText }));
    expect(inInches(level.headerContact)).toBeCloseTo(6.5495 - 0.4375, 3);
  });
});

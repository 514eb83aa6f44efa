import { describe, expect, test } from 'vitest';
import { answerOf, type Changes, changed, LOFT, refusalOf } from '../../fixtures/stairs';

const NO_HANGER = { hanger: undefined } as const;
const LEVEL = { top: 'level-with-floor', ...NO_HANGER } as const;

/** What is refused, where, and what the sentence offers instead. */
const REFUSED: readonly (readonly [string, unknown, string, RegExp])[] = [
  ['not JSON', 'stairs: 1', 'job', /JSON object that begins with "format"/],
  ['not an object', '[1]', 'job', /one object with "format", "version" and "stairs"/],
  ['another format', { ...LOFT, format: 'x' }, 'job', /"format" must be "pitchboard.job"/],
  ['a newer version', { ...LOFT, version: 2 }, 'job', /too new.*reads version 1/],
  ['an older version', { ...LOFT, version: 0 }, 'job', /must be the number 1/],
  ['too large', JSON.stringify(LOFT).padEnd(1_000_001), 'job', /a few kilobytes/],
  ['too deep', '['.repeat(40), 'job', /a job file needs \d/],
  ['an own __proto__', JSON.stringify(LOFT).replace('{', '{"__proto__":1,'), '__proto__', /take it out/],
  ['an unknown key', { ...LOFT, stares: [] }, 'stares', /nearest known one is "stairs"/],
  ['a missing key', { ...LOFT, stairs: [{ id: 'a', survey: {} }] }, 'stairs[0].survey.rise', /required/],
  ['no stairs', { ...LOFT, stairs: [] }, 'stairs', /at least one stair/],
  ['an id twice', { ...LOFT, stairs: [...LOFT.stairs, ...LOFT.stairs] }, 'stairs[1].id', /"loft".*id of its own/],
  [
    'a bare number',
    { ...LOFT, stairs: [{ id: 'a', survey: { rise: 105 } }] },
    'stairs[0].survey.rise',
    /"107 5\/8 in"/,
  ],
];

const CHANGES: readonly (readonly [string, Changes, string, RegExp])[] = [
  ['a text without unit', { survey: { rise: '105 7/16' } }, 'survey.rise', /such as 105 7\/16 in/],
  ['a decimal comma', { survey: { rise: '2733,5 mm' } }, 'survey.rise', /write a point/],
  ['8.10 in feet', { survey: { openingFraming: "8.10'" } }, 'survey.openingFraming', /feet and inches such as 8' 10"/],
  ['a zero denominator', { steps: { run: '10 1/0 in' } }, 'steps.run', /such as 5\/8/],
  ['an exponent', { steps: { run: '1e1 in' } }, 'steps.run', /in full/],
  ['something left over', { steps: { run: '10 in or so' } }, 'steps.run', /write one such as/],
  ['a minus where it has no meaning', { steps: { nosing: '-1 in' } }, 'steps.nosing', /cannot be negative/],
  ['no rise left', { survey: { footBelowReading: '-9 ft' } }, 'survey.rise', /more than nothing/],
  ['no run', { steps: { run: '0 in' } }, 'steps.run', /more than nothing/],
  ['one riser', { steps: { risers: 1 } }, 'steps.risers', /whole number from 2 to 200/],
  ['201 risers', { steps: { risers: 201 } }, 'steps.risers', /whole number from 2 to 200/],
  ['half a riser', { steps: { risers: 13.5 } }, 'steps.risers', /whole number from 2 to 200, or "auto"/],
  [
    'too many risers left to the program',
    { survey: { rise: '200 ft' }, steps: { risers: 'auto' } },
    'steps.risers',
    /at most 200/,
  ],
  ['a nosing of half the run', { steps: { nosing: '5 in' } }, 'steps.nosing', /less than 5 in/],
  [
    'a riser board over a quarter of the run',
    { steps: { riserThickness: '2 3/4 in' } },
    'steps.riserThickness',
    /quarter of the run, that is 2 1\/2 in/,
  ],
  ['a tread of nothing', { steps: { treadThickness: '0 in' } }, 'steps.treadThickness', /more than zero/],
  ['no throat', { stringer: { stockDepth: '6 in', kicker: undefined } }, 'stringer.stockDepth', /deeper board/],
  [
    'no first cut',
    { steps: { treadThickness: '8 1/2 in' } },
    'steps.treadThickness',
    /check the tread, the floor to come and the rise/,
  ],
  [
    'no seat',
    { survey: { lowerToAdd: '3 in' }, stringer: { stockDepth: '6 1/4 in', kicker: undefined } },
    'stringer.stockDepth',
    /deeper board or a smaller drop/,
  ],
  [
    'a heel behind the end',
    { survey: { rise: '15 in' }, steps: { risers: 2 }, stringer: { stockDepth: '12 in', kicker: undefined } },
    'stringer.stockDepth',
    /shallower board/,
  ],
  [
    'a kicker as high as the cut',
    { stringer: { kicker: { width: '3 in', height: '8 in' } } },
    'stringer.kicker.height',
    /lower than the first cut/,
  ],
  [
    'a kicker as wide as the seat',
    { stringer: { kicker: { width: '10 in', height: '1 in' } } },
    'stringer.kicker.width',
    /narrower than the seat/,
  ],
  [
    'a top tread over the run',
    { stringer: { ...LEVEL, topTreadRun: '11 in' } },
    'stringer.topTreadRun',
    /at most the run, 10 in/,
  ],
  ['a top tread on a hung stringer', { stringer: { topTreadRun: '4 in' } }, 'stringer.topTreadRun', /leave this out/],
  [
    'a hanger where there is none',
    { stringer: { top: 'header-behind-riser', hanger: '3/4 in' } },
    'stringer.hanger',
    /leave this out, write 0/,
  ],
  ['tips off the board', { stringer: { tipInset: '12 in' } }, 'stringer.tipInset', /less than its depth, 11 1\/4 in/],
  ['a negative inset', { stringer: { tipInset: '-1 in' } }, 'stringer.tipInset', /cannot be negative/],
  ['auto without a rule', { rules: { pack: 'elsewhere' }, steps: { risers: 'auto' } }, 'steps.risers', /give a number/],
  ['no run and no rule', { rules: { pack: 'elsewhere' }, steps: { run: undefined } }, 'steps.run', /give one/],
];

describe('refused, with the place and what would be accepted', () => {
  test.each(REFUSED)('%s', (_, job, place, offer) => {
    const lines = refusalOf(job);
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(offer);
    expect(lines[0]?.startsWith(`${place}: `)).toBe(true);
  });

  test.each(CHANGES)('%s', (_, changes, place, offer) => {
    const lines = refusalOf(changed(LOFT, changes));
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(offer);
    expect(lines[0]?.startsWith(`stairs[0].${place}: `)).toBe(true);
  });

  test('no plumb cut: the sentence is there, though a throat of more than nothing never lets it come to that', () => {
    // P = throat / cos θ, plus (R/G) tr under a hanger that is the riser: positive whenever the throat is.
    const answer = answerOf(changed(LOFT, { stringer: { stockDepth: '8 in', kicker: undefined } }));
    const cos = answer.run / answer.stepLength;
    expect(answer.plumbCut).toBeCloseTo(answer.throat / cos + 0.75 * 25.4 * (answer.unitRise / answer.run), 8);
  });

  test('a line is one line, without anything of the program in it', () => {
    const lines = refusalOf(changed(LOFT, { survey: { rise: '1\n2\r\nat Object.<anonymous> (x.js:1)' } }));
    expect(lines.join('\n').split('\n')).toHaveLength(1);
    for (const [, job] of REFUSED) expect(refusalOf(job).join()).not.toMatch(/undefined|\[object|at .*:\d+:\d+/);
  });

  test('two wrong stairs are refused together, and so is a right one beside them', () => {
    const wrong = changed(LOFT, { steps: { run: '0 in' } }).stairs[0];
    const lines = refusalOf({ ...LOFT, stairs: [...LOFT.stairs, { ...wrong, id: 'b' }, { ...wrong, id: 'c' }] });
    expect(lines.map((line) => line.split(':')[0])).toEqual(['stairs[1].steps.run', 'stairs[2].steps.run']);
  });

  test('lengths in the sentence are in the unit of the job', () => {
    expect(refusalOf(changed({ ...LOFT, units: 'metric' }, { steps: { nosing: '5 in' } }))[0]).toMatch(
      /less than 127 mm/,
    );
  });
});

describe('said, and laid out all the same', () => {
  const finding = (changes: Changes, field: string) =>
    answerOf(changed(LOFT, changes)).findings.find((each) => each.field === field)?.status;

  test.each<[string, Changes, string]>([
    ['a riser over the limit', { steps: { risers: 13 } }, 'riser.max'],
    ['a run under the limit', { steps: { run: '9 in' } }, 'tread.min'],
    ['headroom under the limit', {}, 'headroom.min'],
    ['a throat under the old rule', { stringer: { stockDepth: '9 1/4 in', kicker: undefined } }, 'throat'],
    ['small header contact', { survey: { headerDepth: '9 1/4 in' } }, 'headerContact'],
    ['no header contact', { survey: { headerDepth: '5 in' } }, 'headerContact'],
    ['a kicker that leaves little toe', { stringer: { kicker: { width: '3 in', height: '6 in' } } }, 'kicker.toe'],
    ['a kicker that leaves little seat', { stringer: { kicker: { width: '9 in', height: '1 in' } } }, 'kicker.seat'],
  ])('%s breaks', (_, changes, field) => {
    expect(finding(changes, field)).toBe('breaks');
  });

  test('with header contact of less than nothing comes the depth that cures it', () => {
    const { headerContact, headerDepthNeeded } = answerOf(changed(LOFT, { survey: { headerDepth: '5 in' } }));
    expect(headerContact).toBeLessThan(0);
    const cured = answerOf(changed(LOFT, { survey: { headerDepth: `${headerDepthNeeded.toFixed(6)} mm` } }));
    expect(cured.headerContact).toBeCloseTo(cured.plumbCut, 5);
  });

  test.each<[string, Changes, RegExp]>([
    ['a pack that this program lacks', { rules: { pack: 'elsewhere' } }, /no rule pack "elsewhere"/],
    ['an implausible height', { survey: { rise: '30 ft' }, steps: { risers: 48 } }, /unusual for one flight/],
    ['an implausible opening', { survey: { openingFraming: '6 in' } }, /unusual/],
  ])('%s is a note', (_, changes, note) => {
    expect(answerOf(changed(LOFT, changes)).notes.filter((each) => note.test(each))).toHaveLength(1);
  });

  test('an unknown finish makes a draft', () => {
    const answer = answerOf(changed(LOFT, { steps: { treadThickness: 'unknown' } }));
    expect([answer.draft, answer.unknowns]).toEqual([true, ['steps.treadThickness']]);
  });
});

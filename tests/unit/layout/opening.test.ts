import { describe, expect, test } from 'vitest';
import { answerOf, type Changes, changed, inInches, LOFT, planOf, SLAB } from '../../fixtures/stairs';

const LEVEL = { top: 'level-with-floor', hanger: undefined } as const;

describe('headroom', () => {
  test('at the finished edge of the opening: worked example of our own, not published', () => {
    const answer = answerOf(LOFT);
    // 105 9/16 − 13 1/4 − R − (R/G)(5 1/4 + 1 1/8), with R = 105 9/16 / 14 and G = 10.
    const unitRise = 105.5625 / 14;
    expect(inInches(answer.headroom)).toBeCloseTo(105.5625 - 13.25 - unitRise - (unitRise / 10) * 6.375, 9);
    expect(Math.abs(inInches(answer.headroom) - 79.965)).toBeLessThan(0.0006);
    expect(inInches(answer.openingNeeded)).toBeCloseTo(126.0458, 4);
    expect(
      Math.abs(inInches(answerOf(changed(LOFT, { survey: { openingFraming: '10\' 0"' } })).headroom) - 75.44),
    ).toBeLessThan(0.005);
  });

  test('the metric stair: worked example of our own, not published', () => {
    expect(Math.abs((answerOf(SLAB).openingNeeded as number) - 2941)).toBeLessThan(0.5);
  });

  test('the opening that is needed gives exactly the headroom that is asked for', () => {
    for (const stringer of [{}, LEVEL, { top: 'header-behind-riser', hanger: undefined }] as const) {
      const needed = answerOf(changed(LOFT, { stringer })).openingNeeded as number;
      const opened = changed(LOFT, { stringer, survey: { openingFraming: `${needed.toFixed(6)} mm` } });
      expect(answerOf(opened).headroom).toBeCloseTo(80 * 25.4, 5);
    }
  });

  test('past the foot of the nosing line a head stands on the floor', () => {
    const wide = answerOf(changed(LOFT, { survey: { openingFraming: '200 in' } }));
    expect(inInches(wide.headroom)).toBeCloseTo(105.5625 - 13.25, 12);
  });

  test('a deeper lining on the low header takes headroom away', () => {
    const thin = answerOf(changed(LOFT, { survey: { headerLining: '0 in' } })).headroom as number;
    const thick = answerOf(changed(LOFT, { survey: { headerLining: '1 in' } })).headroom as number;
    expect((thin - thick) / 25.4).toBeCloseTo(0.7540179, 6);
  });

  test('where the header stands further back, the same opening reaches less far down', () => {
    const edge = (changes: Changes) => planOf(changed(LOFT, changes)).layout.opening.edgeX as number;
    expect((edge({ stringer: LEVEL }) - edge({})) / 25.4).toBeCloseTo(10, 9);
    expect(edge({ stringer: { ...LEVEL, topTreadRun: '3 1/2 in' } }) - edge({})).toBeCloseTo(3.5 * 25.4, 9);
  });
});

describe('what is not computed is said', () => {
  test.each<[string, Changes, string]>([
    ['no floor depth', { survey: { floorDepth: undefined } }, 'survey.floorDepth is not given'],
    ['no opening', { survey: { openingFraming: undefined } }, 'survey.openingFraming is not given'],
    ['a low ceiling', { survey: { floorDepth: '26 in' } }, 'the ceiling itself is lower'],
    ['no headroom in the rules', { rules: { pack: 'elsewhere' } }, 'the chosen rules set no headroom'],
    ['no header depth', { survey: { headerDepth: undefined } }, 'survey.headerDepth is not given'],
    ['no width', { survey: { widthFraming: undefined } }, 'survey.widthFraming is not given'],
    ['a width of nothing', { survey: { widthFraming: '4 in' } }, 'leave no width between these walls'],
    [
      'a storey of 12 in',
      {
        survey: { rise: '12 in' },
        steps: { risers: 2, treadThickness: '1/2 in' },
        stringer: { stockDepth: '7 1/4 in', kicker: undefined },
      },
      'is unusual for one flight',
    ],
    ['a storey of 25 ft', { survey: { rise: '25 ft' }, steps: { risers: 40 } }, 'is unusual for one flight'],
    ['an opening of a foot', { survey: { openingFraming: '1 ft' } }, 'an opening of 12 in is unusual'],
    ['an opening of 40 ft', { survey: { openingFraming: '40 ft' } }, 'an opening of 480 in is unusual'],
  ])('%s', (_, changes, words) => {
    expect(answerOf(changed(LOFT, changes)).notes.filter((note) => note.includes(words))).toHaveLength(1);
  });

  test('nothing is said about the worked stair', () => {
    expect(answerOf(LOFT).notes).toEqual([]);
  });

  test('without floor depth there is neither headroom nor an opening needed', () => {
    const answer = answerOf(changed(LOFT, { survey: { floorDepth: undefined } }));
    expect([answer.headroom, answer.openingNeeded]).toEqual([null, null]);
  });

  test('without an opening the one that is needed is still given', () => {
    const answer = answerOf(changed(LOFT, { survey: { openingFraming: undefined } }));
    expect(answer.headroom).toBeNull();
    expect(inInches(answer.openingNeeded)).toBeCloseTo(126.0458, 4);
  });

  test('under a ceiling that is lower than the headroom no opening helps', () => {
    const low = answerOf(changed(LOFT, { survey: { floorDepth: '25.5625 in' } }));
    expect(low.openingNeeded).not.toBeNull();
    expect(answerOf(changed(LOFT, { survey: { floorDepth: '25.5626 in' } })).openingNeeded).toBeNull();
  });

  test('without header depth there is no contact, but the depth that it needs', () => {
    const answer = answerOf(changed(LOFT, { survey: { headerDepth: undefined } }));
    expect(answer.headerContact).toBeNull();
    expect(inInches(answer.headerDepthNeeded)).toBeCloseTo(14.2177, 4);
  });
});

/** What a layout says of itself beside its numbers: draft, what was used for a key left out, what looks like a slip. */
import { describe, expect, test } from 'vitest';
import type { JobText } from '../../../src/core/job/jobText';
import { readStair } from '../../../src/core/job/readStair';
import type { StairJob } from '../../../src/core/job/stairJob';
import { layFlight } from '../../../src/core/layout/flight';
import { layoutStair, type StairLayout } from '../../../src/core/layout/layoutStair';
import { stackWidth } from '../../../src/core/layout/width';
import { inch, inchMm } from '../../../src/core/units/exact';
import { bare, type Changes, changed, LOFT } from '../../fixtures/stairs';

const LIMITS = { riserMax: inch(7.75), treadMin: inch(10), headroomMin: inch(80) };
const NO_HEADROOM_RULE = { ...LIMITS, headroomMin: null };

/** Read and not laid out, so that a stair which has no layout can be asked about. */
function stairJobOf(job: JobText): StairJob {
  const stair = readStair(job, 0);
  expect(stair.ok).toBe(true);
  return (stair as { value: StairJob }).value;
}

function layoutOf(job: JobText, limits: typeof LIMITS | typeof NO_HEADROOM_RULE = LIMITS) {
  const layout = layoutStair(stairJobOf(job), limits);
  expect(layout.ok).toBe(true);
  return (layout as { value: StairLayout }).value;
}

const loft = (changes: Changes) => changed(LOFT, changes);
const codesOf = ({ notes }: StairLayout) => notes.map(({ code }) => code);

describe('a draft', () => {
  test('is a layout with a finish that nobody knows, and no other', () => {
    expect(layoutOf(LOFT).draft).toBe(false);
    expect(layoutOf(loft({ survey: { upperToAdd: 'unknown' } })).draft).toBe(true);
  });
});

describe('what is only known once the flight is', () => {
  const late = (layout: StairLayout) =>
    layout.defaults.filter(({ key }) => key === 'steps.run' || key === 'stringer.topTreadRun');

  test('nothing where both are written', () => expect(late(layoutOf(LOFT))).toEqual([]));

  test('a run left out is the least one, in the units of the job', () => {
    expect(late(layoutOf(bare('imperial', '105 in')))).toEqual([{ key: 'steps.run', used: '10 in' }]);
    expect(late(layoutOf(bare('metric', '2700 mm')))).toEqual([{ key: 'steps.run', used: '254 mm' }]);
  });

  test('a last tread left out is the run, where there is one level with the floor', () => {
    const level = loft({ stringer: { top: 'level-with-floor', hanger: '0 in' } });
    expect(late(layoutOf(level))).toEqual([{ key: 'stringer.topTreadRun', used: '10 in' }]);
    const written = loft({ stringer: { top: 'level-with-floor', hanger: '0 in', topTreadRun: '9 in' } });
    expect(late(layoutOf(written))).toEqual([]);
  });

  test('the defaults of the survey stay in the list', () => {
    expect(layoutOf(bare('imperial', '105 in')).defaults.map(({ key }) => key)).toContain('survey.headerLining');
  });
});

describe('notes', () => {
  test('a stair with everything measured has none', () => expect(codesOf(layoutOf(LOFT))).toEqual([]));

  test('headroom that no rule asks for, and a ceiling that no opening can clear, are two things', () => {
    expect(codesOf(layoutOf(LOFT, NO_HEADROOM_RULE))).toEqual(['note.noHeadroomLimit']);
    expect(codesOf(layoutOf(loft({ survey: { floorDepth: '40 in' } })))).toEqual(['note.ceilingTooLow']);
    expect(codesOf(layoutOf(loft({ survey: { floorDepth: undefined } }), NO_HEADROOM_RULE))).toEqual([
      'note.noFloorDepth',
    ]);
  });

  // Storeys of 14 in to 20 ft, openings of 2 to 30 ft: common practice, no source.
  const bareFloors = { lowerToAdd: '0 in', upperToAdd: '0 in' };
  test.each([
    ['14 in', 4, []],
    ['13.999 in', 4, ['note.oddRise']],
    ['240 in', 32, []],
    ['240.001 in', 32, ['note.oddRise']],
  ])('a storey of %s', (rise, risers, expected) => {
    const odd = codesOf(layoutOf(loft({ survey: { ...bareFloors, rise }, steps: { risers } })));
    expect(odd.filter((code) => code === 'note.oddRise')).toEqual(expected);
  });

  test.each([
    ['24 in', []],
    ['23.999 in', ['note.oddOpening']],
    ['360 in', []],
    ['360.001 in', ['note.oddOpening']],
  ])('an opening of %s', (openingFraming, expected) => {
    const odd = codesOf(layoutOf(loft({ survey: { openingFraming } })));
    expect(odd.filter((code) => code === 'note.oddOpening')).toEqual(expected);
  });

  test('an odd length is named with its figure', () => {
    const { notes } = layoutOf(
      loft({ survey: { ...bareFloors, rise: '13.75 in', openingFraming: '20 in' }, steps: { risers: 4 } }),
    );
    expect(notes.find(({ code }) => code === 'note.oddRise')?.values).toEqual({ riseMm: inchMm(13.75) });
    expect(notes.find(({ code }) => code === 'note.oddOpening')?.values).toEqual({ openingMm: inchMm(20) });
  });
});

describe('a refused flight says by how much', () => {
  const valuesOf = (changes: Changes) => {
    const flight = layFlight(stairJobOf(loft(changes)), LIMITS);
    return flight.ok ? null : flight.problems[0]?.values;
  };

  test.each<[string, Changes, object]>([
    ['rise', { survey: { rise: '0 in', lowerToAdd: '1 in', upperToAdd: '0 in' } }, { totalRiseMm: -25.4 }],
    [
      'risers',
      { survey: { rise: '1551 in', lowerToAdd: '0 in', upperToAdd: '0 in' }, steps: { risers: 'auto' } },
      { needed: 201, most: 200 },
    ],
    ['nosing', { steps: { nosing: '5 in' } }, { limitMm: 127 }],
    ['riser board', { steps: { riserThickness: '3 in' } }, { limitMm: 63.5 }],
    ['last tread', { stringer: { top: 'level-with-floor', hanger: '0 in', topTreadRun: '11 in' } }, { limitMm: 254 }],
  ])('%s', (_, changes, values) => expect(valuesOf(changes)).toEqual(values));

  test('thirteen runs lead to the face of the fourteenth riser', () => {
    const flight = layFlight(stairJobOf(LOFT), LIMITS);
    expect(flight.ok && flight.value.runToTopRiser).toBe(13 * 254);
  });
});

describe('too narrow a place', () => {
  const stackOf = (widthFraming: string, spacer: string) =>
    stackWidth(stairJobOf(loft({ survey: { widthFraming, spacer } })));

  test('for a tread', () => {
    // Two boards of 1/2, two skirts of 3/4 and the play of 1/16 leave nothing.
    expect(stackOf('2 9/16 in', '0 in')).toBe('too-narrow');
    expect(stackOf('2 37/64 in', '0 in')).toMatchObject({ treadLength: inchMm(1 / 64) });
  });

  test('for two stringers', () => {
    expect(stackOf('10 in', '4 1/4 in')).toBe('too-narrow');
    expect(stackOf('10 in', '4 15/64 in')).toMatchObject({ stringers: 2 });
  });
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { FIRST_VIEW, viewFrom, viewOf } from '../../../src/state/view';

test('a view comes back as it was', () => {
  const view = {
    stairIndex: 2,
    theme: 'sun',
    terms: 'uk',
    step: 'cut',
    gloves: true,
    walk: { list: 'pole', at: 7 },
    ticked: { loft: ['marks/tip-1@6.25'] },
    readings: { loft: ['105 7/16 in', '105 3/8 in'] },
    wishes: { loft: { run: '140 in', by: 'pitch,board' } },
  } as const;
  expect(viewFrom(JSON.parse(JSON.stringify(view)))).toEqual(view);
});

test('a setting of another version falls back alone', () => {
  const kept = { stairIndex: -1, theme: 'neon', terms: 'nz', step: 'paint', walk: { list: 'x', at: 1 }, gloves: true };
  expect(viewFrom(kept)).toEqual({ ...FIRST_VIEW, gloves: true });
});

test('a list that is no list of texts is left out alone', () => {
  expect(viewFrom({ ticked: { a: ['x'], b: [1], c: 'x' } }).ticked).toEqual({ a: ['x'] });
});

test('wishes that are no texts are left out alone', () => {
  const wishes = { a: { run: '140 in' }, b: { run: 140 }, c: ['run'], d: null };
  expect(viewFrom({ wishes }).wishes).toEqual({ a: { run: '140 in' } });
});

test('anything at all gives a whole view', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(Object.keys(viewFrom(value)).sort()).toEqual(Object.keys(FIRST_VIEW).sort());
    }),
  );
});

test('settings are picked out of a state that holds more', () => {
  expect(viewOf({ ...FIRST_VIEW, job: 'x' } as never)).toEqual(FIRST_VIEW);
});

import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../src/core/codes/findings';
import {
  actualWords,
  limitWords,
  marginWords,
  measuredWords,
  replacedWords,
  ruleWords,
  sourceWords,
} from '../../../src/text/findingText';
import { speakerFor } from '../../../src/text/say';

const say = speakerFor('us');
const finding = (changes: Partial<Finding>): Finding => ({
  field: 'riser.max',
  kind: 'rule',
  status: 'meets',
  actual: 7.5,
  limit: 7.75,
  unit: 'in',
  section: 'R1',
  source: 'A code, 2000',
  confidence: 'seen',
  readAgain: [],
  replaced: null,
  ...changes,
});

describe('how much is left, or missing', () => {
  test.each<[string, Partial<Finding>, string]>([
    ['under a most', {}, '1/4 in to spare'],
    ['on it', { actual: 7.75 }, 'exactly on the limit'],
    ['over it', { actual: 8, status: 'breaks' }, '1/4 in too much'],
    ['over a least', { field: 'tread.min', actual: 10.5, limit: 10 }, '1/2 in to spare'],
    ['under a least', { field: 'tread.min', actual: 9.5, limit: 10, status: 'breaks' }, '1/2 in too little'],
    ['a hair of room is not rounded up', { actual: 7.749 }, 'less than 1/32 in to spare'],
    ['room is rounded down', { actual: 7.5 + 1 / 40 }, '3/16 + in to spare'],
    ['what is missing is rounded up', { actual: 7.751, status: 'breaks' }, '1/32 in too much'],
    ['millimetres', { unit: 'mm', actual: 180.04, limit: 190 }, '9.9 mm to spare'],
    ['millimetres missing', { unit: 'mm', actual: 190.01, limit: 190, status: 'breaks' }, '0.1 mm too much'],
    ['degrees', { field: 'pitch.max', unit: 'deg', actual: 40, limit: 42 }, '2° to spare'],
    ['counts', { field: 'flight.maxRisers', unit: 'count', actual: 14, limit: 18 }, '4 to spare'],
    ['a ball', { field: 'openRiser.maxSphere', actual: 3.5, limit: 4 }, '1/2 in to spare'],
    ['too close to call', { actual: 7.7, status: 'close' }, '1/32 in to spare'],
    ['nothing compared', { actual: null }, ''],
    ['not checked', { status: 'not-checked' }, ''],
    ['a rule in words', { limit: 'uniform', unit: 'rule' }, ''],
    ['what asks for something', { field: 'guard.requiredAboveDrop', actual: 29, limit: 30 }, ''],
    ['taste', { kind: 'taste' }, ''],
  ])('%s', (_, changes, words) => {
    expect(marginWords(say, finding(changes))).toBe(words);
  });
});

describe('figures never look better than they are', () => {
  test.each<[Partial<Finding>, string]>([
    [{ actual: 7.7501 }, 'is 7 3/4 + in'],
    [{ field: 'tread.min', actual: 9.9999, limit: 10 }, 'is 9 15/16 + in'],
    [{ field: 'headroom.min', unit: 'mm', actual: 1999.97, limit: 2000 }, 'is 1999.9 mm'],
    [{ field: 'pitch.max', unit: 'deg', actual: 42.01, limit: 42 }, 'is 42.1°'],
    [{ field: 'asCut.adjacent', kind: 'build', unit: 'mm', actual: 5.01, limit: 5 }, 'is 5.1 mm'],
  ])('%o', (changes, words) => {
    expect(actualWords(say, finding(changes))).toBe(words);
  });
});

describe('what is asked', () => {
  test.each<[Partial<Finding>, string]>([
    [{}, 'at most 7 3/4 in'],
    [{ field: 'tread.min' }, 'at least 7 3/4 in'],
    [{ field: 'asCut.adjacent', kind: 'build' }, 'at most 7 3/4 in'],
    [{ field: 'guard.opening.maxSphere', limit: 4 }, 'less than 4 in'],
    [{ field: 'handrail.requiredFromRisers', unit: 'count', limit: 4 }, 'from 4'],
    [{ field: 'guard.requiredAboveDrop', limit: 30 }, 'above 30 in'],
    [{ field: 'openRiser.allowed', unit: 'bool', limit: false }, 'no'],
    [{ field: 'landing.minWidth', unit: 'rule', limit: 'as wide as the flight' }, 'as wide as the flight'],
    [{ field: 'width.min', unit: 'none', limit: null }, 'these rules set no figure'],
    [{ field: 'load.uniform', unit: 'psf', limit: 40 }, '40 psf'],
    [{ field: 'walkingSurface.slope.max', unit: '1:n', limit: 48 }, 'at most 1 in 48'],
  ])('%o', (changes, words) => {
    expect(limitWords(say, finding(changes))).toBe(words);
  });
});

describe('where it is written', () => {
  test('the code is named but where its name stands over the list', () => {
    expect(sourceWords(say, finding({}), '')).toBe('A code, 2000, R1, read in the rule’s own text');
    expect(sourceWords(say, finding({ confidence: 'memory' }), 'A code, 2000')).toBe(
      'R1, recalled from memory, not read yet',
    );
    expect(sourceWords(say, finding({ confidence: 'copy' }), 'A code, 2000')).toBe('R1, read in a copy');
  });

  test('a local limit says whose it is, and what it stands in place of', () => {
    const local = finding({
      confidence: 'local',
      source: 'Elm, ord. 4',
      section: '',
      replaced: { value: 7.75, unit: 'in', section: 'R1' },
    });
    expect(sourceWords(say, local, '')).toBe('local limit: Elm, ord. 4');
    expect(replacedWords(say, local)).toBe('in place of 7 3/4 in, R1');
    expect(replacedWords(say, finding({}))).toBe('');
  });

  test('how it is measured: the pack’s own sentence before that of the field', () => {
    expect(measuredWords(say, finding({}))).toMatch(/^Plumb, /);
    expect(measuredWords(say, finding({ measured: 'Otherwise.' }))).toBe('Otherwise.');
    expect(measuredWords(say, finding({ field: 'scope' }))).toBe('');
  });

  test('a field without a sentence is named', () => {
    expect(ruleWords(say, 'some.thing')).toContain('some.thing');
    expect(ruleWords(say, 'other')).not.toContain('{');
  });
});

import { describe, expect, test } from 'vitest';
import { problemsEn } from '../../../src/text/problems.en';
import { isTextKey, sayProblem, speakerFor } from '../../../src/text/say';

const say = speakerFor('us');

describe('every text that a problem or note can need', () => {
  test.each(Object.entries(problemsEn))('%s fills in what it names', (key, text) => {
    const names = [...text.matchAll(/\{(\w+)\}/g)].map((match) => match[1] as string);
    const values = Object.fromEntries(names.map((name) => [name, `<${name}>`]));
    const said = say(key as keyof typeof problemsEn, values);
    for (const name of names) expect(said).toContain(`<${name}>`);
    expect(said).not.toMatch(/[{}]/);
  });

  test('lengths are said in the unit of the job', () => {
    const found = { code: 'nosing.tooDeep', values: { limitMm: 127 } };
    expect(sayProblem(say, found, 'imperial')).toContain('5 in');
    expect(sayProblem(say, found, 'metric')).toContain('127 mm');
  });

  test('what has no text is said by its code, never by nothing', () => {
    expect(sayProblem(say, { code: 'nobody.knows', values: {} }, 'metric')).toBe('nobody.knows');
    expect([isTextKey('problem.length.unread'), isTextKey('toString')]).toEqual([true, false]);
  });

  test('a text of the user with braces and quotes comes through as it is', () => {
    const said = sayProblem(say, { code: 'length.unread', values: { found: "{limit} 'x' #" } }, 'imperial');
    expect(said).toContain("{limit} 'x' #");
  });

  test('a speaker is the same object every time', () => {
    expect(speakerFor('uk')).toBe(speakerFor('uk'));
    expect(speakerFor('uk')('problem.length.empty')).not.toBe('');
  });
});

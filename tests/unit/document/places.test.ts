import { describe, expect, test } from 'vitest';
import { nearestOf } from '../../../src/document/nearest';
import { openJob } from '../../../src/document/openJob';
import { KNOWN_KEYS } from '../../../src/document/schema';
import { LOFT } from '../../fixtures/stairs';
import { asText, faults, type Loose, loft } from './wrongFiles';

describe('files that are refused at a place', () => {
  test.each<[string, (job: Loose, stair: Loose) => void, string]>([
    [
      'no stairs',
      (job) => {
        job['stairs'] = [];
      },
      'stairs stairs.none',
    ],
    [
      'no list of stairs',
      (job) => {
        delete job['stairs'];
      },
      'stairs key.missing',
    ],
    [
      'stairs that are no list',
      (job) => {
        job['stairs'] = {};
      },
      'stairs value.list',
    ],
    [
      'a stair that is no object',
      (job) => {
        job['stairs'] = ['loft'];
      },
      'stairs[0] value.object',
    ],
    [
      'no survey',
      (_, stair) => {
        delete stair['survey'];
      },
      'stairs[0].survey key.missing',
    ],
    [
      'no rise',
      (_, stair) => {
        delete (stair['survey'] as Loose)['rise'];
      },
      'stairs[0].survey.rise key.missing',
    ],
    [
      'no id',
      (_, stair) => {
        delete stair['id'];
      },
      'stairs[0].id key.missing',
    ],
    [
      'an id that is a number',
      (_, stair) => {
        stair['id'] = 7;
      },
      'stairs[0].id value.text',
    ],
    [
      'an id without end',
      (_, stair) => {
        stair['id'] = 'x'.repeat(1001);
      },
      'stairs[0].id value.tooLong',
    ],
    [
      'a rise that is a number',
      (_, stair) => {
        (stair['survey'] as Loose)['rise'] = 105;
      },
      'stairs[0].survey.rise length.noText',
    ],
    [
      'a rise that is null',
      (_, stair) => {
        (stair['survey'] as Loose)['rise'] = null;
      },
      'stairs[0].survey.rise length.noText',
    ],
    [
      'a finish that is a number',
      (_, stair) => {
        (stair['survey'] as Loose)['lowerToAdd'] = 1;
      },
      'stairs[0].survey.lowerToAdd value.finishForm',
    ],
    [
      'a finish that is half an object',
      (_, stair) => {
        (stair['survey'] as Loose)['lowerToAdd'] = { length: '1 in' };
      },
      'stairs[0].survey.lowerToAdd value.finishForm',
    ],
    [
      'units of another world',
      (job) => {
        job['units'] = 'cubits';
      },
      'units value.choice',
    ],
    [
      'a joint that nobody knows',
      (_, stair) => {
        (stair['steps'] as Loose)['joint'] = 'glued';
      },
      'stairs[0].steps.joint value.choice',
    ],
    [
      'risers as text',
      (_, stair) => {
        (stair['steps'] as Loose)['risers'] = '14';
      },
      'stairs[0].steps.risers value.countForm',
    ],
    [
      'a kicker without height',
      (_, stair) => {
        (stair['stringer'] as Loose)['kicker'] = { width: '3 1/2 in' };
      },
      'stairs[0].stringer.kicker.height key.missing',
    ],
    [
      'a kicker that is a text',
      (_, stair) => {
        (stair['stringer'] as Loose)['kicker'] = '2x4';
      },
      'stairs[0].stringer.kicker value.object',
    ],
    [
      'local rules that are no list',
      (job) => {
        job['rules'] = { local: {} };
      },
      'rules.local value.list',
    ],
    [
      'a local rule without value',
      (job) => {
        job['rules'] = { local: [{ field: 'riser.max' }] };
      },
      'rules.local[0].value key.missing',
    ],
    [
      'a local value that is a number',
      (job) => {
        job['rules'] = { local: [{ field: 'riser.max', value: 8 }] };
      },
      'rules.local[0].value value.text',
    ],
    [
      'an unknown key at the top',
      (job) => {
        job['unit'] = 'metric';
      },
      'unit key.unknown',
    ],
    [
      'an unknown key in the survey',
      (_, stair) => {
        (stair['survey'] as Loose)['rize'] = '1 in';
      },
      'stairs[0].survey.rize key.unknown',
    ],
    [
      'an unknown key in a local rule',
      (job) => {
        job['rules'] = { local: [{ field: 'a', value: '1 in', why: 'b' }] };
      },
      'rules.local[0].why key.unknown',
    ],
    [
      'an unknown key in a finish',
      (_, stair) => {
        (stair['survey'] as Loose)['lowerToAdd'] = { length: '1 in', known: 'assumed', sure: 1 };
      },
      'stairs[0].survey.lowerToAdd.sure key.unknown',
    ],
    [
      'a key of every object',
      (_, stair) => {
        stair['toString'] = 'x';
      },
      'stairs[0].toString key.unknown',
    ],
  ])('%s', (_, change, fault) => {
    expect(faults(loft(change))).toEqual([fault]);
  });

  test('an infinite count, which JSON can write', () => {
    expect(faults(asText(LOFT).replace('"risers":14', '"risers":1e999'))).toEqual([
      'stairs[0].steps.risers value.countForm',
    ]);
  });

  test('the same id twice, at its second place', () => {
    const [stair] = LOFT.stairs;
    expect(faults(asText({ ...LOFT, stairs: [stair, stair, { ...stair, id: 'b' }, stair] }))).toEqual([
      'stairs[1].id stairs.idTwice',
      'stairs[3].id stairs.idTwice',
    ]);
  });

  test('everything at once', () => {
    const found = faults(
      loft((job, stair) => {
        job['units'] = 1;
        stair['survey'] = { rise: 1, depth: 2 };
      }),
    );
    expect([...found].sort()).toEqual([
      'stairs[0].survey.depth key.unknown',
      'stairs[0].survey.rise length.noText',
      'units value.choice',
    ]);
  });

  test.each([
    ['stairs[0].survey', 'rize', 'rise'],
    ['stairs[0].survey', 'upperFinish', 'upperToAdd'],
    ['stairs[0].steps', 'riser', 'risers'],
    ['stairs[0].stringer', 'spacing', 'spacingMax'],
    ['', 'marksteps', 'markStep'],
  ])('in "%s" the key nearest to %s is %s', (_, key, nearest) => {
    const owner = _ === '' ? '' : `stairs.${_.split('.').at(-1)}`;
    expect(nearestOf(key, KNOWN_KEYS[owner] ?? [])).toBe(nearest);
  });

  test('the nearest key is part of what is refused', () => {
    const job = openJob(
      loft((_, stair) => {
        (stair['steps'] as Loose)['nosign'] = '1 in';
      }),
    );
    expect(job.ok ? [] : job.problems[0]?.values).toEqual({ key: 'nosign', nearest: 'nosing' });
  });

  test('the nearest key of a finish, too', () => {
    const job = openJob(
      loft((_, stair) => {
        (stair['steps'] as Loose)['treadThickness'] = { length: '1 in', known: 'assumed', nown: 1 };
      }),
    );
    expect(job.ok ? [] : job.problems[0]?.values).toEqual({ key: 'nown', nearest: 'known' });
  });

  test('nothing is near where nothing is known', () => {
    expect(nearestOf('x', [])).toBe('');
  });
});

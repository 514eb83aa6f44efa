import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { answerJob, main } from '../../../src/cli/layout';
import { speakerFor } from '../../../src/text/say';
import { answerOf, LOFT, SLAB } from '../../fixtures/stairs';

const folder = mkdtempSync(join(tmpdir(), 'pitchboard-'));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

let out = '';
let err = '';
beforeEach(() => {
  out = '';
  err = '';
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    err += String(text);
    return true;
  });
});
afterEach(() => vi.restoreAllMocks());

describe('the command', () => {
  test('one JSON object on standard output, nothing else anywhere', async () => {
    expect(await main([file('loft.json', JSON.stringify(LOFT))])).toBe(0);
    const answer = JSON.parse(out) as Record<string, unknown>;
    expect(answer).toMatchObject({ format: 'pitchboard.layout', version: 1, name: 'Boathouse', units: 'imperial' });
    expect(answer['stairs']).toEqual(JSON.parse(JSON.stringify([answerOf(LOFT)])));
    expect(err).toBe('');
  });

  test.each<[string, () => string[], RegExp]>([
    ['no path', () => [], /^usage: /],
    ['two paths', () => ['a', 'b'], /^usage: /],
    ['a path to nothing', () => [join(folder, 'nothing.json')], /^job: ".*nothing\.json" cannot be read/],
    ['a folder', () => [folder], /^job: .* cannot be read/],
    ['a file that is no job', () => [file('x.json', 'x')], /^job: this is not JSON/],
    ['a picture', () => [file('x.png', new Uint8Array([0x89, 0x50, 0xff]))], /^job: this is not a text file/],
    ['a file that is far too large', () => [file('big.json', ' '.repeat(2_500_000))], /^job: the file is larger/],
  ])('%s: status 2, and only standard error', async (_, args, words) => {
    expect(await main(args())).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(words);
    expect(err.endsWith('\n')).toBe(true);
  });

  test('one line a problem', async () => {
    const job = { ...LOFT, stairs: [{ id: 'a', survey: { rise: '1', headerDepth: '2' } }] };
    expect(await main([file('two.json', JSON.stringify(job))])).toBe(2);
    expect(
      err
        .trimEnd()
        .split('\n')
        .map((line) => line.split(':')[0]),
    ).toEqual(['stairs[0].survey.rise', 'stairs[0].survey.headerDepth']);
  });
});

describe('the answer', () => {
  test('a job without a name or units has an empty name, and is in inches', () => {
    const { name: _n, units: _u, ...job } = LOFT;
    const answer = answerJob(JSON.stringify(job), speakerFor('us'));
    expect(answer.ok && answer.value).toMatchObject({ name: '', units: 'imperial' });
  });

  test('worked example of our own, not published: inches as text files of this project state them', () => {
    const answer = answerOf(LOFT);
    const expected = {
      unitRise: 7.540179,
      firstRiserCut: 7.102679,
      seat: 9.266343,
      boardLength: 161.951689,
      headerContact: 4.1473,
      headerDepthNeeded: 14.2177,
      openingNeeded: 126.0458,
    };
    for (const [key, inches] of Object.entries(expected)) {
      const decimals = String(inches).split('.')[1]?.length ?? 0;
      const found = answer[key as keyof typeof expected] as number;
      expect(Math.abs(found / 25.4 - inches), key).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-12);
    }
  });

  test.each([LOFT, SLAB])('every key of the contract is there, and every number is one', (job) => {
    const answer = answerOf(job);
    for (const key of KEYS) expect(answer).toHaveProperty(key);
    const check = (value: unknown, at: string): void => {
      if (typeof value === 'number') expect(Number.isFinite(value), at).toBe(true);
      else if (value === undefined) expect.fail(`${at} is not said`);
      else if (value !== null && typeof value === 'object')
        for (const [key, inner] of Object.entries(value)) check(inner, `${at}.${key}`);
    };
    check(answer, 'stair');
  });

  test('findings say what was found, against what, and where that stands', () => {
    for (const finding of answerOf(LOFT).findings) {
      expect(Object.keys(finding)).toEqual(['field', 'kind', 'status', 'actual', 'limit', 'unit', 'section', 'source']);
      expect(['rule', 'build', 'taste']).toContain(finding.kind);
      expect(['meets', 'breaks', 'close', 'not-checked']).toContain(finding.status);
    }
  });
});

const KEYS = [
  'id',
  'draft',
  'unknowns',
  'defaults',
  'notes',
  'totalRise',
  'risers',
  'unitRise',
  'treads',
  'run',
  'totalRun',
  'pitchDegrees',
  'stepLength',
  'twoRisePlusRun',
  'notchDepth',
  'gaugeLine',
  'throat',
  'firstRiserCut',
  'drop',
  'seat',
  'plumbCut',
  'lastLevelCut',
  'topBelowFinish',
  'topBelowSubfloor',
  'stringerEnd',
  'headerFace',
  'boardLength',
  'stockLength',
  'firstMark',
  'diagonal',
  'marks',
  'cornerMarks',
  'outline',
  'finishedTops',
  'asCut.step',
  'asCut.risers',
  'asCut.spread',
  'treadDepth',
  'lastTreadDepth',
  'riserHeights',
  'riserOpening',
  'topRiserBoard',
  'hangerHeight',
  'headroom',
  'openingNeeded',
  'headerContact',
  'headerDepthNeeded',
  'width',
  'findings',
];

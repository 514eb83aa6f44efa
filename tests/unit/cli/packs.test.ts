import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, expect, test, vi } from 'vitest';
import { main } from '../../../src/cli/layout';
import { bare } from '../../fixtures/stairs';

const folder = mkdtempSync(join(tmpdir(), 'pitchboard-'));
afterAll(() => rmSync(folder, { recursive: true }));
afterEach(() => vi.restoreAllMocks());

async function answered(rules: object) {
  const path = join(folder, 'job.json');
  writeFileSync(path, JSON.stringify({ ...bare('metric', '2600 mm'), rules }));
  let out = '';
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text);
    return true;
  });
  expect(await main([path])).toBe(0);
  return (
    JSON.parse(out) as { stairs: { risers: number; run: number; notes: string[]; findings: { source: string }[] }[] }
  ).stairs[0];
}

test('the command fetches the pack that a job names before it plans', async () => {
  const england = await answered({ pack: 'adk-2013' });
  expect([england?.risers, england?.run]).toEqual([12, 220]);
  expect(england?.findings.some(({ source }) => source === 'Approved Document K, 2013')).toBe(true);
  const utility = await answered({ pack: 'adk-2013', profile: 'utility' });
  expect([utility?.risers, utility?.run]).toEqual([14, 250]);
});

test('and one that is built on another', async () => {
  const old = await answered({ pack: 'nbc-2010' });
  expect([old?.risers, old?.run]).toEqual([13, 210]);
});

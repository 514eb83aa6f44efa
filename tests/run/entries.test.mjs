import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { ROOT } from '../../src/cli/install.mjs';

const folder = mkdtempSync(join(tmpdir(), 'pitchboard-entries-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function run(script, { args = [], env = {}, node = [] } = {}) {
  const command = [...node, join(ROOT, 'src', 'cli', script), ...args];
  return spawnSync(process.execPath, command, { cwd: folder, env: { ...process.env, ...env }, encoding: 'utf8' });
}

function jobFile(name, text) {
  writeFileSync(join(folder, name), text);
  return name;
}

describe('the layout command', () => {
  const job = {
    format: 'pitchboard.job',
    version: 1,
    stairs: [{ id: 'boathouse', survey: { rise: '104 3/8 in' } }],
  };

  it('puts one JSON object on standard output and nothing else', () => {
    const done = run('run.mjs', { args: [jobFile('job.json', JSON.stringify(job))] });
    expect(done.stderr).toBe('');
    expect(done.status).toBe(0);
    expect(JSON.parse(done.stdout).stairs).toHaveLength(1);
  }, 30_000);

  it('passes on the status of a refusal, with standard output left empty', () => {
    const done = run('run.mjs', { args: [jobFile('broken.json', '{ "format": ')] });
    expect(done).toMatchObject({ status: 2, stdout: '' });
    expect(done.stderr).toMatch(/^job: /);
  }, 30_000);
});

describe('the sheets command', () => {
  const job = { format: 'pitchboard.job', version: 1, stairs: [{ id: 'shed', survey: { rise: '52 in' } }] };

  it('writes its files where it is told, and their names to standard output', () => {
    const done = run('runSheets.mjs', { args: [jobFile('shed.json', JSON.stringify(job)), '--out', 'sheets'] });
    expect(done).toMatchObject({ status: 0, stderr: '' });
    const names = done.stdout.trim().split('\n');
    expect(names).toContain('shed-package.pdf');
    expect(readdirSync(join(folder, 'sheets')).sort()).toEqual(names.sort());
  }, 60_000);

  it('passes on the status of a refusal, and makes no folder', () => {
    const done = run('runSheets.mjs', { args: [jobFile('torn.json', '{ "format": '), '--out', 'nowhere'] });
    expect(done).toMatchObject({ status: 2, stdout: '' });
    expect(existsSync(join(folder, 'nowhere'))).toBe(false);
  }, 60_000);
});

describe('the layouts command', () => {
  const survey = { rise: '104 3/8 in', lowerToAdd: '0 in', upperToAdd: '0 in' };
  const job = { format: 'pitchboard.job', version: 1, stairs: [{ id: 'boathouse', survey }] };

  it('puts one JSON object on standard output and nothing else', () => {
    const done = run('runLayouts.mjs', { args: [jobFile('any.json', JSON.stringify(job)), '--first', '2'] });
    expect(done).toMatchObject({ status: 0, stderr: '' });
    expect(JSON.parse(done.stdout).stairs[0].layouts).toHaveLength(2);
  }, 30_000);
});

describe('an entry script', () => {
  const oldNode = 'data:text/javascript,Object.defineProperty(process,"versions",{value:{node:"20.18.3"}})';

  it.each(['run.mjs', 'runLayouts.mjs', 'runSheets.mjs', 'start.mjs'])('%s says which Node it needs', (script) => {
    const done = run(script, { node: ['--import', oldNode] });
    expect(done).toMatchObject({ status: 1, stdout: '' });
    expect(done.stderr).toContain('needs Node 20.19 or newer; this is Node 20.18.3');
  });

  it.each(['0', 'attic', '70000', '41.5'])('refuses %s as a port', (port) => {
    const done = run('start.mjs', { env: { PORT: port } });
    expect(done).toMatchObject({ status: 1, stdout: '' });
    expect(done.stderr).toContain(`PORT is "${port}"`);
  });
});

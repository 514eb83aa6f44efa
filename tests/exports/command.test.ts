import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { main } from '../../src/cli/sheets';
import type { JobText } from '../../src/core/job/jobText';
import { LOFT, SLAB } from '../fixtures/stairs';
import { readPdf } from './readPdf';
import { commandBench } from './runCommand';

const { folder, run, jobFile } = commandBench(main);

describe('the sheets command', () => {
  it('writes package, templates and files, and names each on a line', async () => {
    const out = join(folder, 'loft');
    const done = await run(jobFile('loft.json', LOFT), '--out', out, '--revision', 'C');
    expect(done).toMatchObject({ status: 0, err: '' });
    const names = readdirSync(out).sort();
    expect(done.out.trim().split('\n').sort()).toEqual(names);
    expect(names).toEqual([
      'Sail-loft-stair-cut-list.csv',
      'Sail-loft-stair-elevation-in.dxf',
      'Sail-loft-stair-elevation.svg',
      'Sail-loft-stair-marks.csv',
      'Sail-loft-stair-package.pdf',
      'Sail-loft-stair-stringer-full-size.svg',
      'Sail-loft-stair-stringer-in.dxf',
      'Sail-loft-stair-stringer-roll-36in.pdf',
      'Sail-loft-stair-strips.pdf',
      'Sail-loft-stair-templates-in.dxf',
      'Sail-loft-stair-templates.pdf',
    ]);
    const { pages } = await readPdf(readFileSync(join(out, 'Sail-loft-stair-package.pdf')));
    for (const { texts } of pages) expect(texts.map(({ text }) => text).join(' ')).toContain('revision C');
  });

  it('takes A4 for a metric job, and the paper that is asked for', async () => {
    const path = jobFile('slab.json', SLAB);
    for (const [more, width] of [
      [[], 297],
      [['--paper', 'a3', '--hand', 'left'], 420],
    ] as const) {
      const out = join(folder, `slab${width}`);
      expect((await run(path, '--out', out, ...more)).status).toBe(0);
      const { pages } = await readPdf(readFileSync(join(out, 'slab-package.pdf')));
      expect(pages[0]?.width).toBeCloseTo(width, 2);
    }
  });

  it('keeps two stairs of one name apart', async () => {
    const [stair] = LOFT.stairs as [JobText['stairs'][number]];
    const out = join(folder, 'twins');
    const twins = { ...LOFT, stairs: [stair, { ...stair, id: 'other' }] };
    expect((await run(jobFile('twins.json', twins), '--out', out)).status).toBe(0);
    expect(readdirSync(out)).toHaveLength(22);
  });

  it.each([
    ['no folder', [], 'usage'],
    ['an option that is not known', ['--out', folder, '--colour', 'red'], '--colour'],
    ['another paper', ['--out', folder, '--paper', 'b5'], 'b5'],
    ['a printer that is far off', ['--out', join(folder, 'never'), '--short', '0.8'], '10 %'],
    ['a factor that is none', ['--out', join(folder, 'never'), '--long', 'wide'], 'long'],
  ])('refuses %s and writes nothing', async (_name, args, said) => {
    const before = readdirSync(folder);
    const done = await run(jobFile('loft.json', LOFT), ...args);
    expect(done).toMatchObject({ status: 2, out: '' });
    expect(done.err).toContain(said);
    expect(readdirSync(folder)).toEqual(before);
  });

  it('refuses a job that cannot be laid out, with its place', async () => {
    const done = await run(jobFile('bad.json', '{"format":"pitchboard.job","version":1,"stairs":[]}'), '--out', folder);
    expect(done).toMatchObject({ status: 2, out: '' });
    expect(done.err).toContain('stairs');
    const gone = await run(join(folder, 'gone.json'), '--out', folder);
    expect(gone).toMatchObject({ status: 2, out: '' });
  });

  it.each([
    ['a place in a file', () => join(jobFile('file', 'x'), 'inside')],
    ['a file', () => jobFile('file', 'x')],
    ['a place that the system makes up', () => '/proc/pitchboard/sheets'],
    ['a device', () => '/dev/null/sheets'],
    ['a name that is too long', () => join(folder, 'deep', 'x'.repeat(300))],
    [
      'a folder that has a folder in a file’s place',
      () => {
        mkdirSync(join(folder, 'taken', 'Sail-loft-stair-package.pdf'), { recursive: true });
        return join(folder, 'taken');
      },
    ],
  ])('says in one sentence that %s cannot be written to, and leaves nothing behind', async (_what, place) => {
    const out = place();
    const path = jobFile('loft.json', LOFT);
    const before = readdirSync(folder, { recursive: true }).map(String).sort();
    const done = await run(path, '--out', out);
    expect(done).toMatchObject({ status: 2, out: '' });
    expect(done.err.trim().split('\n')).toHaveLength(1);
    expect(done.err).toContain(`"${out}" cannot be written to, and nothing was written`);
    expect(readdirSync(folder, { recursive: true }).map(String).sort()).toEqual(before);
  });

  it('speaks UK words, and puts the whole stringer on another paper, when asked', async () => {
    const out = join(folder, 'uk');
    const asked = ['--words', 'uk', '--stringer-paper', 'a3'];
    expect((await run(jobFile('slab.json', SLAB), '--out', out, ...asked)).status).toBe(0);
    expect(readdirSync(out)).toContain('slab-stringer-a3.pdf');
    expect(readFileSync(join(out, 'slab-cut-list.csv'), 'utf8')).toContain('string, board to buy');
  });
});

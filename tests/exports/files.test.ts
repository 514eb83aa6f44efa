import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { csvOf } from '../../src/export/csv';
import { exportName } from '../../src/export/fileNames';
import { PACKAGE_SHEETS } from '../../src/export/sheets/sheetNames';
import {
  cutListFile,
  dxfFile,
  elevationFile,
  marksFile,
  packageFile,
  type StairSource,
  stringerSvgFile,
  templatesFile,
} from '../../src/export/stairFiles';
import { changed, LOFT, SLAB } from '../fixtures/stairs';
import { made, NAMES, named, sourceOf, textOf } from './asNamed';
import { MM_PER_INCH, readPdf } from './readPdf';
import { choiceOf, LUMBER } from './sheets';

describe('CSV', () => {
  const read = (text: string): string[][] => parse(text, { bom: true, relax_column_count: false });

  it('has numbers that are numbers, and lengths in three forms that agree', async () => {
    for (const job of [LOFT, SLAB]) {
      for (const file of [cutListFile, marksFile]) {
        const text = await textOf(file(sourceOf(job), choiceOf()));
        expect(text.startsWith('\uFEFF')).toBe(true);
        expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
        const [heads = [], ...rows] = read(text);
        expect(rows.length).toBeGreaterThan(4);
        const at = heads.flatMap((head, i) => (head.endsWith(' mm') ? [i] : []));
        for (const row of rows) {
          expect(row).toHaveLength(heads.length);
          for (const i of at) {
            const [mm = '', inches = '', tape = ''] = row.slice(i, i + 3);
            if (mm === '') continue;
            expect(Number(mm) / MM_PER_INCH).toBeCloseTo(Number(inches), 3);
            // A tape's form always has its unit, so that no program takes it for a date.
            expect(tape).toMatch(/^(\d+|\d+ \d+\/\d+|\d+\/\d+) in$/);
            const [, whole, top, bottom] = /^(?:(\d+)(?: |$| in))?(?:(\d+)\/(\d+))? ?(?:in)?$/.exec(tape) ?? [];
            const said = Number(whole ?? 0) + Number(top ?? 0) / Number(bottom ?? 1);
            expect(Math.abs(said - Number(inches))).toBeLessThan(1 / 32 + 1e-4);
          }
        }
      }
    }
  });

  it('lists what the printed sheet says', async () => {
    const { plan } = sourceOf(LOFT);
    const rows = read(await textOf(marksFile(sourceOf(LOFT), choiceOf()))).slice(1);
    const expected = [...plan.sheet.tips, ...plan.sheet.corners, plan.sheet.end];
    expect(rows.map((row) => Number(row[3]))).toEqual(expected.map((mm) => expect.closeTo(mm, 3)));
  });

  it.each(NAMES)('cannot be made to calculate by a name: %j', async (name) => {
    for (const cell of read(await textOf(cutListFile(sourceOf(named(LOFT, name)), choiceOf()))).flat()) {
      if (cell !== '' && Number.isFinite(Number(cell))) continue;
      expect(cell).not.toMatch(/^[\s\u00A0]*[=+\-@＝＋－＠]/u);
      expect(cell).not.toMatch(/[\p{Cc}]/u);
    }
  });

  it('keeps negative numbers, and leaves no cell without a place', () => {
    expect(
      read(
        csvOf([
          ['a', 'b', 'c'],
          [-1.5, null, '-1.5'],
          [0, 'x,"y"', '＝1'],
        ]),
      ),
    ).toEqual([
      ['a', 'b', 'c'],
      ['-1.5', '', "'-1.5"],
      ['0', 'x,"y"', "'＝1"],
    ]);
  });
});

describe('PDF', () => {
  /** Every place where a name or another text of the job stands. */
  const everything = (source: StairSource) => [
    packageFile(source, { ...choiceOf(), sheets: ['cover', 'survey', 'findings'], lumber: LUMBER }),
    templatesFile(source, { ...choiceOf(), templates: ['triangle', 'poleStrip'], what: 'templates' }),
  ];

  it.each(NAMES)(
    'holds no script, link or file whatever the stair is called, and no text runs off: %j',
    async (name) => {
      for (const file of everything(sourceOf(named(LOFT, name)))) {
        const { content } = await made(file);
        // Without what is packed: its bytes may spell anything, and nobody reads them as keys.
        const raw = new TextDecoder('latin1').decode(content).replace(/stream\r?\n[\s\S]*?endstream/g, '');
        expect(raw).not.toMatch(/\/(JavaScript|JS|Launch|URI|EmbeddedFile|AcroForm|AA|GoToR|SubmitForm|RichMedia)\b/);
        const { pages } = await readPdf(content);
        for (const { width, texts } of pages) {
          for (const text of texts) {
            expect(text.x + text.width, text.text).toBeLessThan(width - 9);
            expect(text.text).not.toMatch(/[\p{Cc}\u202A-\u202E]/u);
          }
        }
      }
    },
  );

  it('asks the viewer not to scale, and for the tray of its paper', async () => {
    for (const file of everything(sourceOf(LOFT))) {
      const { preferences } = await readPdf((await made(file)).content);
      expect(preferences).toMatchObject({ PrintScaling: 'None', PickTrayByPDFSize: true });
    }
  });

  it('says a job’s own accents, fractions and primes', async () => {
    const file = packageFile(sourceOf(named(LOFT, 'Été ½ ⅝ ′ ″ Кухня')), {
      ...choiceOf(),
      sheets: ['cover'],
      lumber: LUMBER,
    });
    const { pages } = await readPdf((await made(file)).content);
    expect(pages[0]?.texts.map(({ text }) => text).join(' ')).toContain('Été ½ ⅝ ′ ″ Кухня');
  });
});

describe('every file', () => {
  const all = (source: StairSource) => [
    packageFile(source, { ...choiceOf(), sheets: PACKAGE_SHEETS, lumber: LUMBER }),
    templatesFile(source, { ...choiceOf(), templates: ['triangle', 'heel', 'topEnd'], what: 'templates' }),
    dxfFile(source, choiceOf()),
    cutListFile(source, choiceOf()),
    marksFile(source, choiceOf()),
    elevationFile(source, choiceOf()),
    stringerSvgFile(source, choiceOf()),
  ];

  it('has the same bytes when it is made twice', async () => {
    const [once, again] = [await Promise.all(all(sourceOf(LOFT))), await Promise.all(all(sourceOf(LOFT)))];
    once.forEach((file, i) => {
      const other = again[i];
      if (!file.ok || !other?.ok) throw new Error('refused');
      expect(Buffer.compare(file.value.content, other.value.content), file.value.name).toBe(0);
    });
  });

  it('is refused, with the reason, for a layout that does not agree with itself', async () => {
    const { job, plan, say } = sourceOf(LOFT);
    const { stringer } = plan.layout;
    const broken = {
      ...plan,
      layout: { ...plan.layout, stringer: { ...stringer, firstMark: stringer.firstMark + 25 } },
    };
    const misprinted = { ...plan, sheet: { ...plan.sheet, toeHeight: plan.sheet.toeHeight + 27 } };
    for (const bad of [broken, misprinted]) {
      for (const file of all({ job, plan: bad, say })) {
        expect(await file).toMatchObject({ ok: false, problems: [{ code: 'check.failed', place: 'stairs[0]' }] });
      }
    }
  });

  it('is refused when the printer is off by more than a tenth', async () => {
    const choice = { ...choiceOf(), correction: { short: 0.8, long: 1 } };
    expect(await packageFile(sourceOf(LOFT), { ...choice, sheets: ['cover'], lumber: LUMBER })).toMatchObject({
      ok: false,
      problems: [{ code: 'paper.correctionTooFar' }],
    });
  });

  it.each(NAMES)('has a name that is only a name: %j', (name) => {
    const file = exportName(name, 'cut-list.csv');
    expect(file).toMatch(/^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$/);
    expect(file.endsWith('-cut-list.csv')).toBe(true);
    expect(file).not.toMatch(/^(con|prn|aux|nul|com\d|lpt\d)[.-]/i);
  });

  it('names its unit where the file itself cannot', async () => {
    expect((await made(dxfFile(sourceOf(LOFT), choiceOf()))).name).toBe('Sail-loft-stair-stringer-in.dxf');
    expect((await made(dxfFile(sourceOf(changed(SLAB, {})), choiceOf()))).name).toBe('slab-stringer-mm.dxf');
  });
});

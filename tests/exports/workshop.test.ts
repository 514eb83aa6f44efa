import { describe, expect, it } from 'vitest';
import { dxfFile, packageFile } from '../../src/export/stairFiles';
import { loadLumber } from '../../src/packs/lumber/lumber';
import { makeFile } from '../../src/workshop/makeFile';
import { FILE_KINDS, type Order } from '../../src/workshop/order';
import { changed, LOFT, SLAB } from '../fixtures/stairs';
import { made, sourceOf } from './asNamed';
import { readPdf } from './readPdf';
import { choiceOf } from './sheets';

const order = (more: Partial<Order>): Order => ({
  kind: 'package',
  job: LOFT,
  stair: 0,
  terms: 'us',
  choice: choiceOf(),
  sheets: ['cover', 'stringer'],
  ...more,
});

describe('the workshop', () => {
  it('is handed plain data, and makes the very file that the command makes', async () => {
    // The page judges with the doubt of a tape, the command without: what is cut is the same.
    const sent = structuredClone(order({ sheets: ['stringer', 'cutList'] }));
    const [here, there] = [
      await made(packageFile(sourceOf(LOFT), { ...choiceOf(), sheets: sent.sheets, lumber: await loadLumber() })),
      await made(makeFile(sent)),
    ];
    expect(Buffer.compare(there.content, here.content)).toBe(0);
    expect(there.name).toBe(here.name);
  });

  it('makes every kind of file, except a picture where there is no canvas: that is refused in words', async () => {
    for (const kind of FILE_KINDS) {
      const answer = await makeFile(order({ kind }));
      if (kind !== 'picture') expect(answer.ok, kind).toBe(true);
      else expect(answer).toMatchObject({ ok: false, problems: [{ code: 'paper.noPicture' }] });
    }
  });

  it('puts in the sheets that were chosen and no others', async () => {
    const { content } = await made(makeFile(order({ sheets: ['cautions'] })));
    const { pages } = await readPdf(content);
    expect(pages).toHaveLength(1);
    expect(pages[0]?.texts.some(({ text }) => text === 'Cautions')).toBe(true);
  });

  it('refuses a stair that cannot be laid out, and a printer that is far off', async () => {
    const impossible = changed(LOFT, { stringer: { stockDepth: '4 in' } });
    expect((await makeFile(order({ job: impossible }))).ok).toBe(false);
    const off = { ...choiceOf(), correction: { short: 1, long: 1.2 } };
    expect((await makeFile(order({ choice: off }))).ok).toBe(false);
  });

  it('speaks the words of the trade that the page speaks', async () => {
    for (const [terms, said, other] of [
      ['us', /stringer|header/i, /trimmer|going, planned/],
      ['uk', /trimmer/, /stringer|header|subfloor|Story|\brun\b|skirt/i],
    ] as const) {
      const sheets = ['stringer', 'heights', 'cutList', 'treads', 'inspection'] as const;
      const { pages } = await readPdf((await made(makeFile(order({ job: SLAB, terms, sheets })))).content);
      const text = pages.flatMap(({ texts }) => texts.map((one) => one.text)).join('\n');
      expect(text).toMatch(said);
      expect(text.replace(/numbers run/g, '')).not.toMatch(other);
    }
  });

  it('has the same bytes for a drawing at any time', async () => {
    const [one, two] = [
      await made(dxfFile(sourceOf(SLAB), choiceOf())),
      await made(makeFile(order({ kind: 'dxf', job: SLAB }))),
    ];
    expect(Buffer.compare(one.content, two.content)).toBe(0);
  });
});

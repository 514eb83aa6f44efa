import { describe, expect, it } from 'vitest';
import type { CarryText, JobText } from '../../src/core/job/jobText';
import { pdfOf } from '../../src/export/pdf';
import { changed, DECK, LOFT, SLAB } from '../fixtures/stairs';
import { readPdf } from './readPdf';
import { collisions, FONTS, packageOf, tooNearTheEdge } from './sheets';

const WOOD: CarryText = { species: 'southern-pine', grade: 'no-2', service: 'wet' };
const told = (job: JobText, carry: CarryText): JobText => ({
  ...job,
  stairs: job.stairs.map((stair) => ({ ...stair, carry })),
});

async function readBack(job: JobText): Promise<string> {
  const { pages } = await readPdf(await pdfOf(packageOf(job, {}, ['carry']), FONTS));
  return pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
}

describe('the sheets of what the stringer can carry, read back from the file', () => {
  it('carry the wood, the answers and their shares', async () => {
    const text = await readBack(told(LOFT, WOOD));
    for (const words of ['Southern Pine', 'No. 2', 'Wet', 'Bending at the throat', '1570 psi', '690 psi', '228 %']) {
      expect(text).toContain(words);
    }
    expect(text).toContain('Build by a table that your building department accepts');
  });

  it('carry the working, with sums and figures, and each source once', async () => {
    const text = await readBack(told(LOFT, WOOD));
    expect(text).toContain('Fb × CD × CM × CF × Ci × Cr');
    expect(text).toContain('750 × 1 × 1 × 1 × 0.8 × 1.15');
    expect(text.match(/a digest of section 3\.3\.3/g)).toHaveLength(1);
    // Every number in brackets is one of the list.
    const named = new Set([...text.matchAll(/\[(\d+)\]/g)].map(([, number]) => Number(number)));
    expect(named.has(0)).toBe(false);
    expect(Math.max(...named)).toBe(named.size);
  });

  it('mark what is from memory, and whose each printed figure is', async () => {
    const text = await readBack(told(LOFT, WOOD));
    expect(text.match(/FROM MEMORY/g)?.length).toBeGreaterThan(3);
    expect(text).toContain('USDA, Agriculture Handbook 73');
    expect(text).toContain('90 mm = 3 1/2 + in');
  });

  it('claim nothing for wood that the data lacks, and print its name as it was given', async () => {
    const text = await readBack(told(LOFT, { ...WOOD, species: 'bog oak' }));
    expect(text).toContain('bog oak (not in the data)');
    expect(text).toContain('Not in the data');
    expect(text).not.toContain('690 psi');
    expect(await readBack(LOFT)).toContain('not said yet');
  });

  it('speak in newtons where the job is metric', async () => {
    const text = await readBack(told(SLAB, { ...WOOD, species: 'hem-fir', live: '1.9 kPa' }));
    expect(text).toContain('1.9 kPa');
    expect(text).toContain('N/mm²');
    expect(text).not.toMatch(/\bpsi\b|\bpsf\b/);
  });

  it.each(['letter', 'a4', 'legal', 'tabloid'] as const)('keep their texts apart on %s', (paper) => {
    for (const job of [told(LOFT, WOOD), LOFT, told(DECK, WOOD), told(SLAB, { support: 'along-walls' })]) {
      const pages = packageOf(job, { paper }, ['carry']);
      for (const page of pages) {
        expect(collisions(page)).toEqual([]);
        expect(tooNearTheEdge(page, 10)).toEqual([]);
      }
    }
  });

  it('never say that a stair is in order, nor print what is no number', async () => {
    for (const job of [told(LOFT, WOOD), LOFT, changed(SLAB, {}), told(DECK, { species: 'x'.repeat(900) })]) {
      const text = await readBack(job);
      expect(text).not.toMatch(/approved|compliant|certified|\bsafe\b|passes/i);
      expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
    }
  });
});

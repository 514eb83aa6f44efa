import { describe, expect, it } from 'vitest';
import { readCorrection } from '../../src/core/drawing/correction';
import type { Page } from '../../src/core/drawing/page';
import { EDGE, liveArea, PAPER_NAMES } from '../../src/core/drawing/paper';
import type { JobText, StringerTop, TreadRiserJoint } from '../../src/core/job/jobText';
import { pdfOf } from '../../src/export/pdf';
import { changed, DECK, LOFT, planOf, SLAB } from '../fixtures/stairs';
import { MM_PER_INCH, type ReadPage, readPdf } from './readPdf';
import {
  barFaults,
  collisions,
  FONTS,
  packageOf,
  struckThrough,
  templatePages,
  textsOf,
  tooNearTheEdge,
} from './sheets';

const CLOSE = 0.01;
const BAR_PEN = 0.25;
const ALL = ['triangle', 'heel', 'topEnd', 'marksStrip', 'poleStrip'] as const;
const SHEETS = PAPER_NAMES.filter((name) => name !== 'roll36');
const TOPS: readonly StringerTop[] = [
  'header-behind-riser',
  'hanger-is-riser',
  'hanger-behind-riser',
  'level-with-floor',
];
const JOINTS: readonly TreadRiserJoint[] = ['tread-butts-riser', 'riser-on-tread'];

/** Longest straight line each way with the bars' pen that starts in a corner of the live area. */
function barsOn(page: ReadPage): { readonly across: number; readonly up: number; readonly diagonal: number } {
  const thin = page.lines.filter(({ width, points }) => Math.abs(width - BAR_PEN) < 0.001 && points.length === 2);
  const [across] = longest(thin.filter(({ points: [a, b] }) => a?.[1] === b?.[1]));
  const [up] = longest(thin.filter(({ points: [a, b] }) => a?.[0] === b?.[0]));
  const [from, right] = ends(across);
  const other = ends(up).find(([x, y]) => Math.hypot(x - (from?.[0] ?? 0), y - (from?.[1] ?? 0)) > 50) ?? [0, 0];
  const [far] = [right ?? [0, 0]];
  return { across: spanOf(across), up: spanOf(up), diagonal: Math.hypot(far[0] - other[0], far[1] - other[1]) };
}

type Line = ReadPage['lines'][number];

function longest(lines: readonly Line[]): readonly Line[] {
  return [...lines].sort((one, other) => spanOf(other) - spanOf(one));
}

function ends(line: Line | undefined): readonly (readonly [number, number])[] {
  return line?.points ?? [];
}

function spanOf(line: Line | undefined): number {
  const [a = [0, 0], b = [0, 0]] = line?.points ?? [];
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/** What the page says of its bars, in inches: `9 1/2 in`. */
function saidInches(page: ReadPage): number[] {
  const text = page.texts.map((one) => one.text).join(' ');
  return [...text.matchAll(/(\d+)( 1\/2)? in\b/g)].map(([, whole, half]) => Number(whole) + (half ? 0.5 : 0));
}

describe('proof bars', () => {
  it.each(SHEETS)('are as long as they say, on every page, on %s', async (paper) => {
    const job = paper === 'a4' || paper === 'a3' ? SLAB : LOFT;
    const pages = [
      ...templatePages(planOf(job), ALL, { paper }),
      ...packageOf(job, { paper }, ['elevation', 'cautions']),
    ];
    const { pages: read } = await readPdf(await pdfOf(pages, FONTS));
    expect(read).toHaveLength(pages.length);
    for (const page of read) {
      const { across, up } = barsOn(page);
      const [long, short] = [Math.max(across, up), Math.min(across, up)];
      for (const bar of [long, short]) {
        const inches = bar / MM_PER_INCH;
        expect(Math.abs(inches * 2 - Math.round(inches * 2)) * MM_PER_INCH).toBeLessThan(CLOSE);
        expect(saidInches(page)).toContain(Math.round(inches * 2) / 2);
      }
      expect(long).toBeGreaterThanOrEqual(9 * MM_PER_INCH - CLOSE);
      expect(short).toBeGreaterThanOrEqual(6.5 * MM_PER_INCH - CLOSE);
    }
  });

  it('has a bar of nine and a half inches over the step triangle of the main job', async () => {
    const { pages } = await readPdf(await pdfOf(templatePages(planOf(LOFT), ['triangle']), FONTS));
    const bars = barsOn(pages[0] as ReadPage);
    expect(bars.across).toBeCloseTo(9.5 * MM_PER_INCH, 2);
    expect(bars.up).toBeCloseTo(7 * MM_PER_INCH, 2);
  });

  it('says the diagonal between their far ends', async () => {
    const { pages } = await readPdf(await pdfOf(templatePages(planOf(SLAB), ALL, { paper: 'a4' }), FONTS));
    for (const page of pages) {
      const said = / ([\d.]+) mm · printer/.exec(page.texts.map(({ text }) => text).join(' '))?.[1];
      const { across, up } = barsOn(page);
      expect(Number(said)).toBeCloseTo(Math.hypot(across, up), 0);
    }
  });
});

describe('a corrected printer', () => {
  const correction = { short: 0.985, long: 1.012 };

  it('gets every length at full size divided by its factor, each way', async () => {
    const plain = templatePages(planOf(LOFT), ALL);
    const turned = templatePages(planOf(LOFT), ALL, { correction });
    const read = await readPdf(await pdfOf(turned, FONTS));
    read.pages.forEach((page, i) => {
      const { turn } = (turned[i] as Page).sheet;
      const { across, up } = barsOn(page);
      const [x, y] = turn === 'lying' ? [correction.long, correction.short] : [correction.short, correction.long];
      for (const true_ of [(across * x) / MM_PER_INCH, (up * y) / MM_PER_INCH]) {
        expect(Math.abs(true_ * 2 - Math.round(true_ * 2)) * MM_PER_INCH).toBeLessThan(CLOSE);
      }
    });
    expect(plain.length).toBeLessThanOrEqual(turned.length);
  });

  it('is told so on every sheet, and stays within the margins', () => {
    for (const name of ['letter', 'a4'] as const) {
      const pages = [
        ...templatePages(planOf(LOFT), ALL, { paper: name, correction }),
        ...packageOf(LOFT, { paper: name, correction }),
      ];
      for (const page of pages) {
        const words = textsOf(page).map(({ content }) => (content.kind === 'words' ? content.text : ''));
        expect(words.some((text) => text.includes('0.9850') && text.includes('1.0120'))).toBe(true);
        expect(tooNearTheEdge(page, EDGE - CLOSE)).toEqual([]);
      }
    }
  });

  it.each([
    [1.1, 0.9, true],
    [1.1000001, 1, false],
    [1, 0.8999999, false],
    [0, 1, false],
    [Number.NaN, 1, false],
    [1, Number.POSITIVE_INFINITY, false],
    [-1, 1, false],
  ])('is believed up to a tenth: %s, %s', (short, long, accepted) => {
    expect(readCorrection(short, long).ok).toBe(accepted);
  });
});

/** Every way to end a stringer, with and without a kicker, in both systems. */
const SWEEP: readonly (readonly [string, JobText])[] = [LOFT, SLAB].flatMap((base) =>
  TOPS.flatMap((top) =>
    [true, false].flatMap((kicker) =>
      JOINTS.map((joint): readonly [string, JobText] => {
        const metric = base === SLAB;
        const hanger =
          top === 'header-behind-riser' || top === 'level-with-floor' ? '0 in' : metric ? '18 mm' : '3/4 in';
        const block = metric ? { width: '90 mm', height: '38 mm' } : { width: '3 1/2 in', height: '1 1/2 in' };
        const job = changed(base, {
          steps: { joint },
          stringer: { top, hanger, kicker: kicker ? block : undefined, tipInset: kicker ? '0 in' : '1/8 in' },
        });
        return [`${metric ? 'metric' : 'imperial'} ${top} ${kicker ? 'kicker' : 'plain'} ${joint}`, job];
      }),
    ),
  ),
);

/** Inches: what Letter, the smallest sheet, has room for. */
const LEAST_BARS = [9, 6.5] as const;

describe('pages of every kind of stair', () => {
  it.each(SWEEP)('keep bars and margins, with no text on another or on a line: %s', (_name, job) => {
    const plan = planOf(job);
    for (const paper of PAPER_NAMES) {
      for (const hand of ['right', 'left'] as const) {
        // The whole stringer is for the roll; on the smallest sheet it shows that many pieces are no worse.
        const whole = paper === 'roll36' || (paper === 'letter' && hand === 'right') ? (['stringer'] as const) : [];
        const pages = [
          ...templatePages(plan, [...ALL, ...whole], { paper, hand }),
          ...(hand === 'right' ? packageOf(job, { paper }) : []),
        ];
        for (const page of pages) {
          expect(collisions(page), paper).toEqual([]);
          expect(struckThrough(page), paper).toEqual([]);
          expect(tooNearTheEdge(page, EDGE - CLOSE), paper).toEqual([]);
          expect(barFaults(page, LEAST_BARS), paper).toEqual([]);
        }
      }
    }
  });

  it('keep to the area that fits Letter and A4 alike where a template is tiled', () => {
    for (const [job, paper] of [
      [LOFT, 'letter'],
      [SLAB, 'a4'],
    ] as const) {
      for (const page of templatePages(planOf(job), ['marksStrip', 'poleStrip', 'heel'], { paper })) {
        const live = liveArea(page.sheet);
        expect(live.right - live.left).toBeLessThanOrEqual(259);
        for (const { at, window } of page.tiles) {
          expect(at.x).toBeGreaterThanOrEqual(live.left - CLOSE);
          expect(at.x + window.right - window.left).toBeLessThanOrEqual(live.right + CLOSE);
        }
      }
    }
  });

  it('holds for stairs that are low, tall, narrow on paper or long', () => {
    const odd = [
      DECK,
      changed(LOFT, { survey: { rise: '170 in', openingFraming: '260 in' }, steps: { risers: 23, run: '11 in' } }),
      changed(LOFT, { survey: { rise: '16 in' }, steps: { risers: 2 } }),
      changed(SLAB, { steps: { run: '330 mm', risers: 18 } }),
      changed(LOFT, { stringer: { top: 'level-with-floor', topTreadRun: '2 in', hanger: '0 in' } }),
      changed(LOFT, { survey: { lowerToAdd: 'unknown' } }),
    ];
    for (const job of odd) {
      for (const paper of ['letter', 'a4', 'tabloid'] as const) {
        const pages = [...templatePages(planOf(job), ALL, { paper }), ...packageOf(job, { paper })];
        for (const page of pages) {
          expect(collisions(page)).toEqual([]);
          expect(struckThrough(page)).toEqual([]);
          expect(tooNearTheEdge(page, EDGE - CLOSE)).toEqual([]);
        }
      }
    }
  });

  it('sets nothing smaller than can be read on paper', () => {
    for (const page of [...packageOf(LOFT), ...templatePages(planOf(LOFT), ALL)]) {
      for (const { size } of textsOf(page)) expect(size).toBeGreaterThanOrEqual(3.2);
    }
  });
});

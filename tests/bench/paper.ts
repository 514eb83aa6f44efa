/** How long paper takes: sixty tiles beside what the writer of PDF files itself takes for the same marks. */
import { jsPDF } from 'jspdf';
import { UNCORRECTED } from '../../src/core/drawing/correction';
import type { TextMark } from '../../src/core/drawing/drawing';
import { isBold, type Page } from '../../src/core/drawing/page';
import { furnish } from '../../src/core/drawing/pageFrame';
import { tapeParts } from '../../src/core/drawing/sketch';
import { draftTemplate } from '../../src/core/drawing/templatePages';
import type { JobText } from '../../src/core/job/jobText';
import { planStair } from '../../src/core/plan/planStair';
import { inchMm } from '../../src/core/units/exact';
import { demoJob } from '../../src/document/demoJob';
import { type Fonts, loadFonts } from '../../src/export/font/fonts';
import { PAPER_PENS } from '../../src/export/paperPens';
import { pdfOf } from '../../src/export/pdf';
import { paperWords } from '../../src/export/sheets/packagePages';
import { PACKAGE_SHEETS } from '../../src/export/sheets/sheetNames';
import { packageFile } from '../../src/export/stairFiles';
import { loadLumber } from '../../src/packs/lumber/lumber';
import { BOOK } from '../../src/packs/ruleBook';
import { speakerFor } from '../../src/text/say';

const TILES = 60;
const ROUNDS = 7;
const POINTS_PER_MM = 72 / inchMm(1);

/** A stair whose stringer takes sixty sheets and few more, for all of them are made. Invented. */
const LONG: JobText = {
  format: 'pitchboard.job',
  version: 1,
  stairs: [{ id: 'long', survey: { rise: '127 1/2 in' }, steps: { risers: 17, run: '10 in' } }],
};

/** Milliseconds of the processor for one call of each: the least of several rounds by turns, whatever else the machine does. */
async function times(works: readonly (() => Promise<unknown>)[]): Promise<number[]> {
  const least = works.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const [i, work] of works.entries()) {
      const start = process.cpuUsage();
      await work();
      const { user, system } = process.cpuUsage(start);
      least[i] = Math.min(least[i] as number, (user + system) / 1000);
    }
  }
  return least;
}

export async function benchPaper() {
  const planned = planStair(demoJob, 0, BOOK);
  if (!planned.ok) throw new Error('The example is refused.');
  const [say, fonts, lumber] = [speakerFor('us'), await loadFonts(), await loadLumber()];
  const source = { job: demoJob, plan: planned.value, say };
  const words = paperWords(say);
  const facts = { units: 'imperial', revision: 'A', job: 'Bench', draft: false, correction: UNCORRECTED } as const;
  const options = { paper: 'letter', hand: 'right', correction: UNCORRECTED } as const;
  const long = planStair(LONG, 0, BOOK);
  if (!long.ok) throw new Error('The long stair is refused.');
  const tiles = () => {
    const drafts = draftTemplate('stringer', long.value, options, words, fonts.measure);
    if (drafts.length < TILES) throw new Error(`The long stair has ${drafts.length} tiles.`);
    return furnish(drafts.slice(0, TILES), facts, words, fonts.measure);
  };
  const pages = tiles();
  const choice = { paper: 'letter', hand: 'right', revision: 'A', sheets: PACKAGE_SHEETS, lumber } as const;
  const [library, ours, whole] = (await times([
    async () => plainly(pages, fonts),
    () => pdfOf(tiles(), fonts),
    () => packageFile(source, choice),
  ])) as [number, number, number];
  return [
    {
      name: `${TILES} tiles / the writer alone, the same marks (${library.toFixed(0)} ms)`,
      ratio: ours / library,
      goal: 1.2,
    },
    { name: `package of one stair / ${TILES} tiles by the writer alone`, ratio: whole / library, goal: 1.2 },
  ];
}

/** The same lines and texts, with nothing but calls of the library. */
function plainly(pages: readonly Page[], fonts: Fonts): ArrayBuffer {
  const [first] = pages as readonly [Page];
  const formatOf = ({ sheet: { width, height } }: Page) =>
    ({ format: [width, height], orientation: width > height ? 'landscape' : 'portrait' }) as const;
  const doc = new jsPDF({
    ...formatOf(first),
    format: [...formatOf(first).format],
    unit: 'mm',
    compress: true,
    putOnlyUsedFonts: true,
  });
  for (const weight of ['regular', 'bold'] as const) {
    doc.addFileToVFS(`${weight}.ttf`, fonts[weight]);
    doc.addFont(`${weight}.ttf`, 'Sheet', weight === 'bold' ? 'bold' : 'normal', undefined, 'Identity-H');
  }
  pages.forEach((page, i) => {
    if (i > 0) doc.addPage([...formatOf(page).format], formatOf(page).orientation);
    for (const mark of page.marks) {
      if (mark.kind === 'shape') {
        const [from, ...others] = mark.corners;
        if (from === undefined) continue;
        doc.setLineWidth(PAPER_PENS[mark.role].width);
        doc.setLineDashPattern([...(PAPER_PENS[mark.role].dash ?? [])], 0);
        doc.moveTo(from.x, page.sheet.height - from.y);
        for (const { x, y } of others) doc.lineTo(x, page.sheet.height - y);
        if (mark.closed) doc.close();
        doc.stroke();
      } else {
        const y = page.sheet.height - mark.at.y;
        for (const text of piecesOf(mark)) {
          doc.setFont('Sheet', isBold(mark.role) ? 'bold' : 'normal');
          doc.setFontSize(mark.size * POINTS_PER_MM);
          doc.text(text, mark.at.x, y);
        }
        if (mark.content.kind === 'tape' && tapeParts(mark.content.number).numerator !== '') {
          doc.moveTo(mark.at.x, y);
          doc.lineTo(mark.at.x + mark.size, y);
          doc.stroke();
        }
      }
    }
  });
  return doc.output('arraybuffer');
}

/** A figure of the tape is several texts to the writer: whole, upper and lower number, and the sign for heavy. */
function piecesOf({ content }: TextMark): readonly string[] {
  if (content.kind !== 'tape') return [content.text];
  const { whole, numerator, denominator, heavy } = tapeParts(content.number);
  return [whole, numerator, denominator, heavy ? '+' : ''].filter((text) => text !== '');
}

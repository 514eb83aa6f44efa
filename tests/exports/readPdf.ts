/** Reads a PDF with a reader that has nothing to do with its writer: lines and texts in mm, y up from the lower left. */
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Written anew here: a wrong one in the program must not hide. */
export const MM_PER_INCH = 25.4;
const MM = MM_PER_INCH / 72;

export interface ReadLine {
  readonly points: readonly (readonly [number, number])[];
  readonly width: number;
  readonly dashed: boolean;
}

export interface ReadText {
  readonly text: string;
  readonly x: number;
  /** The foot of the letters. */
  readonly y: number;
  readonly width: number;
  readonly size: number;
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly ReadLine[];
  readonly texts: readonly ReadText[];
}

export async function readPdf(bytes: Uint8Array): Promise<{ preferences: unknown; pages: readonly ReadPage[] }> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, disableFontFace: true, useSystemFonts: false });
  const doc = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= doc.numPages; number += 1) pages.push(await readPage(await doc.getPage(number)));
  const preferences: unknown = await doc.getViewerPreferences();
  await task.destroy();
  return { preferences, pages };
}

type PageProxy = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>['promise']>['getPage']>>;

async function readPage(page: PageProxy): Promise<ReadPage> {
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  const { fnArray, argsArray } = await page.getOperatorList();
  const lines: ReadLine[] = [];
  let width = 0;
  let dashed = false;
  fnArray.forEach((operator, i) => {
    const args = argsArray[i] as unknown[];
    if (operator === OPS.setLineWidth) width = (args[0] as number) * MM;
    if (operator === OPS.setDash) dashed = (args[0] as number[]).length > 0;
    if (operator !== OPS.constructPath) return;
    const [path] = args[1] as [Float32Array | null];
    if (path !== null) lines.push({ points: pointsOf(path), width, dashed });
  });
  const content = await page.getTextContent();
  const texts = content.items.flatMap((item): ReadText[] => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [size = 0, , , , x = 0, y = 0] = item.transform as number[];
    return [{ text: item.str, x: x * MM, y: y * MM, width: item.width * MM, size: size * MM }];
  });
  return { width: (right - left) * MM, height: (top - bottom) * MM, lines, texts };
}

/** A path is numbers: what to do, and where; 0 move, 1 line, 4 close. */
function pointsOf(path: Float32Array): (readonly [number, number])[] {
  const points: (readonly [number, number])[] = [];
  for (let i = 0; i < path.length; ) {
    const what = path[i] as number;
    if (what === 4) {
      points.push(points[0] as [number, number]);
      i += 1;
      continue;
    }
    if (what > 1) throw new Error(`The path has a step ${what}: these files hold straight lines only.`);
    points.push([(path[i + 1] as number) * MM, (path[i + 2] as number) * MM]);
    i += 3;
  }
  return points;
}

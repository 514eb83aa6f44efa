/**
 * The two fonts that paper is set in, fetched when paper is asked for and not before. They travel
 * inside their module as text, since the page may fetch nothing and the command has no server.
 */
import type { TextMeasure } from '../../core/drawing/page';
import { type Face, readFace } from './face';

export interface Fonts {
  readonly regular: string;
  readonly bold: string;
  readonly measure: TextMeasure;
  /** What can be printed: characters that the fonts lack become an empty box, and are seen to be missing. */
  readonly printable: (text: string) => string;
}

const MISSING = '□';

export async function loadFonts(): Promise<Fonts> {
  const [regular, bold] = await Promise.all([import('./regular.ttf?inline'), import('./bold.ttf?inline')]);
  return fontsOf(base64Of(regular.default), base64Of(bold.default));
}

/** @param regular base64 of a TrueType file, like @param bold */
function fontsOf(regular: string, bold: string): Fonts {
  const faces = { regular: readFace(bytesOf(regular)), bold: readFace(bytesOf(bold)) };
  const printable = remembered((text) =>
    Array.from(text, (char) => (isIn(faces.regular, char) && isIn(faces.bold, char) ? char : MISSING)).join(''),
  );
  const widthIn = (face: Face) =>
    remembered((text) => Array.from(printable(text), (char) => face.advance(char.codePointAt(0) ?? 0)).reduce(add, 0));
  const widths = { regular: widthIn(faces.regular), bold: widthIn(faces.bold) };
  return {
    regular,
    bold,
    printable,
    measure: (text, isBold) => (isBold ? widths.bold : widths.regular)(text),
  };
}

/** The same few texts stand on every sheet. */
function remembered<T>(work: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const now = work(text);
    known.set(text, now);
    return now;
  };
}

function add(a: number, b: number): number {
  return a + b;
}

function isIn(face: Face, char: string): boolean {
  return face.has(char.codePointAt(0) ?? 0);
}

function base64Of(address: string): string {
  return address.slice(address.indexOf(',') + 1);
}

function bytesOf(base64: string): Uint8Array {
  return Uint8Array.from(atob(base64), (char) => char.charCodeAt(0));
}

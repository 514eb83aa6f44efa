/**
 * Reads from a TrueType file which characters it has and how wide they are: what is set on paper is
 * measured before it is set. Only the tables `cmap` (format 4) and `hmtx` are looked at.
 */

export interface Face {
  readonly has: (codePoint: number) => boolean;
  /** In ems; a character that the font lacks has none. */
  readonly advance: (codePoint: number) => number;
}

/** A character of the basic plane, as Windows fonts list them. */
const WINDOWS_UNICODE = { platform: 3, encoding: 1 };

export function readFace(bytes: Uint8Array): Face {
  const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const table = tablesOf(data);
  const unitsPerEm = data.getUint16(table('head') + 18);
  const lastWidth = data.getUint16(table('hhea') + 34) - 1;
  const widths = table('hmtx');
  const glyphs = glyphsOf(data, table('cmap'));
  return {
    has: (codePoint) => glyphs.has(codePoint),
    advance: (codePoint) => {
      const glyph = glyphs.get(codePoint);
      return glyph === undefined ? 0 : data.getUint16(widths + 4 * Math.min(glyph, lastWidth)) / unitsPerEm;
    },
  };
}

function tablesOf(data: DataView): (name: string) => number {
  const places = new Map<string, number>();
  for (let i = 0; i < data.getUint16(4); i += 1) {
    const record = 12 + 16 * i;
    const name = String.fromCharCode(...[0, 1, 2, 3].map((k) => data.getUint8(record + k)));
    places.set(name, data.getUint32(record + 8));
  }
  return (name) => {
    const place = places.get(name);
    if (place === undefined) throw new Error(`The font has no table ${name}.`);
    return place;
  };
}

function glyphsOf(data: DataView, cmap: number): ReadonlyMap<number, number> {
  const glyphs = new Map<number, number>();
  const table = subtableOf(data, cmap);
  const segments = data.getUint16(table + 6) / 2;
  const [ends, starts, deltas, offsets] = [14, 16, 16, 16].map((base, i) => table + base + 2 * segments * i) as [
    number,
    number,
    number,
    number,
  ];
  for (let i = 0; i < segments; i += 1) {
    const delta = data.getUint16(deltas + 2 * i);
    const offset = data.getUint16(offsets + 2 * i);
    const start = data.getUint16(starts + 2 * i);
    for (let code = start; code <= data.getUint16(ends + 2 * i) && code < 0xffff; code += 1) {
      const listed = offset === 0 ? code : data.getUint16(offsets + 2 * i + offset + 2 * (code - start));
      const glyph = listed === 0 ? 0 : (listed + delta) & 0xffff;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
  return glyphs;
}

function subtableOf(data: DataView, cmap: number): number {
  for (let i = 0; i < data.getUint16(cmap + 2); i += 1) {
    const record = cmap + 4 + 8 * i;
    const { platform, encoding } = WINDOWS_UNICODE;
    if (data.getUint16(record) !== platform || data.getUint16(record + 2) !== encoding) continue;
    const table = cmap + data.getUint32(record + 4);
    if (data.getUint16(table) === 4) return table;
  }
  throw new Error('The font has no list of characters that can be read.');
}

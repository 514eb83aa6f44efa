/**
 * What is read on the sheets of the package, row by row as the eye goes, and the tables for a spreadsheet.
 * The stairs are worked examples of our own, not published.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import type { TextMark } from '../../src/core/drawing/drawing';
import type { Page } from '../../src/core/drawing/page';
import { tapeText } from '../../src/core/units/format';
import type { PackageSheet } from '../../src/export/sheets/sheetNames';
import { cutListFile, marksFile } from '../../src/export/stairFiles';
import { sourceOf, textOf } from '../exports/asNamed';
import { choiceOf, packageOf, textsOf } from '../exports/sheets';
import { LOFT, SLAB } from '../fixtures/stairs';

const writing = process.env['PITCHBOARD_GOLDEN'] === 'write';
/** Sheets that are tables; those that are pictures have files of their own in docs/maths. */
const TABLES: readonly PackageSheet[] = [
  'survey',
  'stringer',
  'heights',
  'cutList',
  'treads',
  'findings',
  'inspection',
];
/** Texts whose middles are nearer than this are one row. Millimetres. */
const SAME_ROW = 1.2;

function shown({ content }: TextMark): string {
  return content.kind === 'tape' ? tapeText(content.number) : content.text;
}

function rowsOf(page: Page): string[] {
  const rows: TextMark[][] = [];
  for (const mark of [...textsOf(page)].sort((one, other) => other.at.y - one.at.y)) {
    const row = rows.at(-1);
    if (row?.[0] !== undefined && row[0].at.y - mark.at.y < SAME_ROW) row.push(mark);
    else rows.push([mark]);
  }
  return rows.map((row) =>
    [...row]
      .sort((one, other) => one.at.x - other.at.x)
      .map(shown)
      .join(' | '),
  );
}

function compare(file: string, text: string): void {
  const path = fileURLToPath(new URL(file, import.meta.url));
  if (writing) writeFileSync(path, text);
  expect(existsSync(path), `${file} is missing: npm run golden writes it`).toBe(true);
  expect(text).toBe(readFileSync(path, 'utf8'));
}

test.each([
  ['loft', LOFT, 'letter'],
  ['slab', SLAB, 'a4'],
] as const)('the tables on paper: %s', (name, job, paper) => {
  const pages = packageOf(job, { paper }, TABLES);
  compare(`${name}-sheets.txt`, `${pages.map((page) => rowsOf(page).join('\n')).join('\n\n')}\n`);
});

test.each([
  ['loft', LOFT],
  ['slab', SLAB],
] as const)('the tables for a spreadsheet: %s', async (name, job) => {
  const files = [
    await textOf(cutListFile(sourceOf(job), choiceOf())),
    await textOf(marksFile(sourceOf(job), choiceOf())),
  ];
  compare(`${name}-tables.csv.txt`, files.join('\n').replaceAll('\r', '').replaceAll('\uFEFF', ''));
});

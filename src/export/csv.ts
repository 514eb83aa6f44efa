/**
 * Tables for a spreadsheet, by RFC 4180: commas, CRLF, quotes doubled. Numbers stay numbers; a length
 * is given in millimetres, in decimal inches, and as the tape reads, with its unit, since a bare 3/4
 * would be taken for a date. What a user wrote can never start a formula.
 */
import { plainText } from './plainText';

export type Cell = string | number | null;

/** Without it a spreadsheet takes UTF-8 for something older. */
const BYTE_ORDER_MARK = '\uFEFF';
const LINE_END = '\r\n';
/** Signs that make a spreadsheet calculate, also full width, and after any blank. */
const STARTS_FORMULA = /^[\s\u00A0]*[=+\-@\t\r\n\0＝＋－＠]/u;
const DECIMALS = 4;

export function csvOf(rows: readonly (readonly Cell[])[]): string {
  return BYTE_ORDER_MARK + rows.map((row) => row.map(cellText).join(',') + LINE_END).join('');
}

function cellText(cell: Cell): string {
  if (cell === null) return '';
  // Never an exponent, never a comma: 0 is as good as what is left of a float below the last decimal.
  if (typeof cell === 'number') return String(Number(cell.toFixed(DECIMALS)) + 0);
  const plain = plainText(cell);
  const inert = STARTS_FORMULA.test(plain) ? `'${plain}` : plain;
  return /[",;\r\n]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert;
}

/**
 * The boards of a flight by the setting that the saw gets for them: how many of each, and the printed
 * number, already rounded down. Boards that come to the same setting are one row.
 */
import type { PrintedSheet } from '../check/printedSheet';
import { atMost } from '../geometry/tolerance';
import type { StairLayout } from '../layout/layoutStair';

export interface RipPiece {
  readonly piece: 'tread' | 'last-tread' | 'first-riser' | 'riser' | 'top-riser' | 'hanger';
  readonly count: number;
  readonly setting: number;
}

export function ripPieces({ flight }: StairLayout, sheet: PrintedSheet): readonly RipPiece[] {
  const lastDiffers = differ(sheet.lastTreadRip, sheet.treadRip);
  const [first, ...others] = sheet.riserRips;
  const [usual] = others;
  const firstDiffers = first !== undefined && (usual === undefined || differ(first, usual));
  const pieces: RipPiece[] = [
    { piece: 'tread', count: flight.treads - (lastDiffers ? 1 : 0), setting: sheet.treadRip },
    { piece: 'last-tread', count: lastDiffers ? 1 : 0, setting: sheet.lastTreadRip },
    { piece: 'first-riser', count: firstDiffers ? 1 : 0, setting: first ?? 0 },
    { piece: 'riser', count: sheet.riserRips.length - (firstDiffers ? 1 : 0), setting: usual ?? 0 },
    { piece: 'top-riser', count: sheet.topRiserRip === null ? 0 : 1, setting: sheet.topRiserRip ?? 0 },
    { piece: 'hanger', count: sheet.hangerRip === null ? 0 : 1, setting: sheet.hangerRip ?? 0 },
  ];
  return pieces.filter(({ count }) => count > 0);
}

/** Two settings that a fence can tell apart. */
function differ(a: number, b: number): boolean {
  return !(atMost(a, b) && atMost(b, a));
}

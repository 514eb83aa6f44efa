/**
 * Everything that is ripped or cut for one stair, by the setting of the saw's fence, widest first.
 * Settings are the sheet's, rounded down there; lengths are what the wood must measure.
 *
 * Only what is known is said. Where no width was measured, nobody has said that there are walls either:
 * pieces across the stair have no length then, and pieces that lie along a wall are not listed.
 */
import { onGrid, type PrintedSheet } from '../check/printedSheet';
import type { StairLayout } from '../layout/layoutStair';
import { toMm } from '../units/exact';
import { type RipPiece, ripPieces } from './ripPieces';
import type { Skirt } from './skirt';

export type CutPiece = RipPiece['piece'] | 'stringer' | 'kicker' | 'spacer' | 'skirt';

/**
 * What a length goes by. `stock`: the board sold that holds it. `between-skirts`: with the play that
 * lets it in. `outside-stringers`: from the outer face of one outer stringer to the other's.
 * `lower-edge`: along the stringer's lower edge. `skirt`: between square ends.
 */
export type LengthBy = 'stock' | 'between-skirts' | 'outside-stringers' | 'lower-edge' | 'skirt';

export interface CutRow {
  readonly piece: CutPiece;
  /** Null for stringers that nobody has counted and no width can. */
  readonly count: number | null;
  /** `rip`: the fence's setting. `as-bought`: not ripped. `at-least`: any board that is as wide. */
  readonly widthIs: 'rip' | 'as-bought' | 'at-least';
  readonly width: number | null;
  readonly length: number | null;
  readonly lengthBy: LengthBy;
  /** Null while it is not known. */
  readonly thickness: number | null;
}

/** Rows that are ripped without touching the fence; the last group, without a setting, is not ripped. */
export interface FenceGroup {
  readonly setting: number | null;
  readonly rows: readonly CutRow[];
}

/** True where the first riser board stands on a floor that falls across: it is ripped for the lowest end. */
export function scribesFirstRiser({ layout }: { readonly layout: StairLayout }): boolean {
  return layout.flight.slopeAcross !== 0 && layout.rips.riserHeights.length > 0;
}

export function cutList(layout: StairLayout, sheet: PrintedSheet, skirt: Skirt): readonly FenceGroup[] {
  const rows = [
    ...ripPieces(layout, sheet).map((piece) => rippedRow(layout, piece)),
    ...kickerRow(layout),
    stringerRow(layout, sheet),
    ...packingRow(layout),
    ...wallRows(layout, sheet, skirt),
  ];
  const settings = rows.flatMap(({ widthIs, width }) => (widthIs === 'rip' && width !== null ? [width] : []));
  const ripped = [...new Set(settings)]
    .sort((a, b) => b - a)
    .map((setting) => ({
      setting,
      rows: rows.filter(({ widthIs, width }) => widthIs === 'rip' && width === setting),
    }));
  return [...ripped, { setting: null, rows: rows.filter(({ widthIs }) => widthIs !== 'rip') }];
}

/**
 * Treads and riser boards go in between the skirts. So does the hanger board: as the top riser it is seen
 * between them, and behind a riser the wallboard and the skirts still run past it up to the floor.
 */
function rippedRow(layout: StairLayout, { piece, count, setting }: RipPiece): CutRow {
  return {
    piece,
    count,
    widthIs: 'rip',
    width: setting,
    length: layout.width?.treadLength ?? null,
    lengthBy: 'between-skirts',
    thickness: thicknessOf(layout, piece),
  };
}

function thicknessOf({ job, flight, stringer }: StairLayout, piece: RipPiece['piece']): number | null {
  if (piece === 'hanger') return stringer.top.hanger;
  if (piece !== 'tread' && piece !== 'last-tread') return flight.riserThickness;
  return job.steps.treadThickness.known === 'unknown' ? null : flight.treadThickness;
}

/** One block on the floor under all stringers: it has to meet every toe, and reaches no farther. */
function kickerRow({ stringer, width }: StairLayout): CutRow[] {
  if (stringer.kicker === null) return [];
  const length = width === null ? null : width.betweenSkirts - 2 * width.treadOverhang;
  return [
    {
      piece: 'kicker',
      count: 1,
      widthIs: 'rip',
      width: stringer.kicker.width,
      length,
      lengthBy: 'outside-stringers',
      thickness: stringer.kicker.height,
    },
  ];
}

function stringerRow({ job, stringer, width }: StairLayout, sheet: PrintedSheet): CutRow {
  const counted = job.stringer.count === 'auto' ? null : job.stringer.count;
  return {
    piece: 'stringer',
    count: width?.stringers ?? counted,
    widthIs: 'as-bought',
    width: stringer.stockDepth,
    length: sheet.stockLength,
    lengthBy: 'stock',
    thickness: stringer.stockThickness,
  };
}

/** A board behind a stringer that is level with the floor: its height is whoever hangs it's to choose. */
function packingRow({ stringer, width }: StairLayout): CutRow[] {
  const { hung, hanger } = stringer.top;
  if (hung || hanger === 0) return [];
  return [
    {
      piece: 'hanger',
      count: 1,
      widthIs: 'as-bought',
      width: null,
      length: width?.treadLength ?? null,
      lengthBy: 'between-skirts',
      thickness: hanger,
    },
  ];
}

/** A spacer and a skirt on each wall. The spacer lies low on the stringer, under the ends of all treads. */
function wallRows({ job, stringer, width }: StairLayout, sheet: PrintedSheet, skirt: Skirt): CutRow[] {
  if (width === null) return [];
  const { heel, top } = stringer;
  const lowerEdge = Math.hypot(top.endX - heel.heelX, top.topY - top.plumbCut - heel.heelY);
  const both = { count: 2 } as const;
  const rows: CutRow[] = [
    {
      ...both,
      piece: 'spacer',
      widthIs: 'as-bought',
      width: null,
      length: lowerEdge,
      lengthBy: 'lower-edge',
      thickness: toMm(job.survey.spacer),
    },
    {
      ...both,
      piece: 'skirt',
      widthIs: 'at-least',
      width: onGrid(skirt.widthNeeded, sheet.ripStep, 'up'),
      length: skirt.boardLength,
      lengthBy: 'skirt',
      thickness: toMm(job.survey.skirt),
    },
  ];
  return rows.filter(({ thickness }) => thickness !== 0);
}

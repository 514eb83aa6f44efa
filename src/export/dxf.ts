/**
 * The stringer for a machine or another drawing program, in the job's own unit: the outline as one
 * closed line, marks, board edges, and a line of known length to prove the unit.
 * Frame: x along the crown edge from the first tip, uphill; y = 0 the board's edge, wood below it.
 */
import type { StairPlan } from '../core/plan/planStair';
import { boardFrame, toBoard } from '../core/stringer/board';
import { inchMm, mmToInches } from '../core/units/exact';
import type { UnitSystem } from '../core/units/length';
import type { Speaker } from '../text/say';
import { plainText } from './plainText';

/** Codes of the header: 1 inches, 4 millimetres; measurement 0 inches, 1 metric. */
const HEADER = { imperial: { unit: 1, measurement: 0 }, metric: { unit: 4, measurement: 1 } };
const LAYERS = { CUT: 7, MARK: 3, DIM: 5, TEXT: 8 } as const;
type Layer = keyof typeof LAYERS;
/** Proves the unit: 4 inches or 100 mm, under the board's end. */
const PROOF: Readonly<Record<UnitSystem, number>> = { imperial: inchMm(4), metric: 100 };
const BELOW = 60;
const LETTERS = 8;
const TICK = 12;
const LONGEST = 200;

/** @param name what is written under it: job, stair, revision */
export async function dxfOf({ layout }: Pick<StairPlan, 'layout'>, name: string, say: Speaker): Promise<string> {
  const { DxfWriter, point2d, point3d } = await import('@tarikjabiri/dxf');
  const { stringer, flight, job } = layout;
  const { unit, measurement } = HEADER[job.units];
  const scaled = (mm: number) => (job.units === 'imperial' ? mmToInches(mm) : mm);
  const dxf = new DxfWriter();
  dxf.setUnits(unit);
  dxf.setVariable('$MEASUREMENT', { 70: measurement });
  dxf.setVariable('$LASTSAVEDBY', { 1: 'Pitchboard' });
  for (const [layer, colour] of Object.entries(LAYERS)) dxf.addLayer(layer, colour);
  const line = (layer: Layer, x1: number, y1: number, x2: number, y2: number) =>
    dxf.addLine(point3d(scaled(x1), scaled(y1)), point3d(scaled(x2), scaled(y2)), { layerName: layer });
  const words = (x: number, y: number, text: string) =>
    dxf.addText(point3d(scaled(x), scaled(y)), scaled(LETTERS), inert(text), { layerName: 'TEXT' });

  const frame = boardFrame(flight, stringer.tipInset);
  const corners = stringer.outline.map((corner) => toBoard(frame, corner));
  const vertices = corners.map(({ x: u, y: v }) => ({ point: point2d(scaled(u), scaled(-v)) }));
  dxf.addLWPolyline(vertices, { flags: 1, layerName: 'CUT' });
  for (const along of stringer.marks) line('MARK', along, -stringer.tipInset, along, TICK);
  for (const along of stringer.cornerMarks) line('MARK', along, -stringer.gaugeLine, along, -stringer.gaugeLine - TICK);
  const left = -stringer.firstMark;
  const right = stringer.endMark + stringer.trim;
  const lower = -stringer.stockDepth;
  line('MARK', left, -stringer.gaugeLine, right, -stringer.gaugeLine);
  for (const y of [0, lower]) line('MARK', left, y, right, y);
  for (const x of [left, right]) line('MARK', x, lower, x, 0);
  const proof = PROOF[job.units];
  line('DIM', left, lower - BELOW, left + proof, lower - BELOW);
  words(left, lower - BELOW + 4, say(job.units === 'imperial' ? 'dxf.proof.imperial' : 'dxf.proof.metric'));
  words(left, lower - BELOW - 2 * LETTERS, name);
  return dxf.stringify();
}

/** The file goes by lines, `%%` and `\` start signs of their own in its texts, and `^` a control. */
function inert(text: string): string {
  const plain = plainText(text)
    .replace(/%(?=%)/g, '% ')
    .replaceAll('\\', '/')
    .replaceAll('^', "'");
  return Array.from(plain).slice(0, LONGEST).join('');
}

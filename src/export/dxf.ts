/**
 * Drawings for a machine or another drawing program, in the job's own unit: the stringer on its board, the
 * templates beside each other, the elevation. All at full size, layers by role, and in each a dimensioned
 * length that proves the unit.
 */
import type { Drawing, Mark, Role, ShapeMark, TextMark } from '../core/drawing/drawing';
import { STACKED } from '../core/drawing/pageSketch';
import { ROLE_PENS } from '../core/drawing/pens';
import { boxOf, contentEms, fractionEms, type TapeParts, tapeParts } from '../core/drawing/sketch';
import type { Template } from '../core/drawing/template';
import { type Point, point } from '../core/geometry/point';
import type { StairPlan } from '../core/plan/planStair';
import { boardFrame, toBoard } from '../core/stringer/board';
import { inchMm, mmToInches } from '../core/units/exact';
import type { UnitSystem } from '../core/units/length';
import type { Speaker } from '../text/say';
import { plainText } from './plainText';

/** Codes of the header: 1 inches, 4 millimetres; measurement 0 inches, 1 metric. */
const HEADER = { imperial: { unit: 1, measurement: 0 }, metric: { unit: 4, measurement: 1 } };
const DASHED = 'DASHED';
const CENTRE = 'CENTER';
const SOLID = 'Continuous';

/** Layers with their colours and kinds of line, which go by the kinds of the drawing model. */
const LAYERS = {
  CUT: [7, SOLID],
  MARK: [3, SOLID],
  BOARD: [8, SOLID],
  WASTE: [9, SOLID],
  WOOD: [30, SOLID],
  HOUSE: [8, SOLID],
  FINISH: [4, DASHED],
  REFERENCE: [6, CENTRE],
  DIM: [5, SOLID],
  TEXT: [8, SOLID],
} as const;
type Layer = keyof typeof LAYERS;

const LAYER_OF: Readonly<Partial<Record<Role, Layer>>> = {
  stringer: 'WOOD',
  tread: 'WOOD',
  riser: 'WOOD',
  hanger: 'WOOD',
  kicker: 'WOOD',
  'landing-nosing': 'WOOD',
  'cut-line': 'CUT',
  house: 'HOUSE',
  'floor-today': 'HOUSE',
  'ground-hatch': 'HOUSE',
  'to-come': 'FINISH',
  unknown: 'FINISH',
  'board-line': 'BOARD',
  'nosing-line': 'REFERENCE',
  'gauge-line': 'REFERENCE',
  'template-cut': 'CUT',
  'waste-hatch': 'WASTE',
  registration: 'MARK',
  'mark-point': 'MARK',
};

/** Proves the unit: 4 inches or 100 mm, under the drawing's lower left corner. */
const PROOF: Readonly<Record<UnitSystem, number>> = { imperial: inchMm(4), metric: 100 };
const BELOW = 60;
const LETTERS = 8;
const TICK = 12;
const LONGEST = 200;
/** Between two templates. */
const APART = 60;
/** Of the letters, in ems: digits and capitals. */
const CAPITAL = 0.73;
const DIGIT_EM = 0.6;
/** From the bar of a fraction to the middles of its digits, in ems. */
const STACK_OFF = 0.34;

type Sources = Pick<StairPlan, 'layout'>;

/** @param name what is written under it: job, stair, revision */
export async function stringerDxf({ layout }: Sources, name: string, say: Speaker): Promise<string> {
  const { stringer, flight, job } = layout;
  const sheet = await DxfSheet.begin(job.units);
  const frame = boardFrame(flight, stringer.tipInset);
  sheet.outline(
    'CUT',
    stringer.outline.map((corner) => toBoard(frame, corner)).map(({ x: u, y: v }) => point(u, -v)),
  );
  for (const along of stringer.marks) sheet.line('MARK', point(along, -stringer.tipInset), point(along, TICK));
  for (const along of stringer.cornerMarks)
    sheet.line('MARK', point(along, -stringer.gaugeLine), point(along, -stringer.gaugeLine - TICK));
  const left = -stringer.firstMark;
  const right = stringer.endMark + stringer.trim;
  const lower = -stringer.stockDepth;
  sheet.line('REFERENCE', point(left, -stringer.gaugeLine), point(right, -stringer.gaugeLine));
  for (const y of [0, lower]) sheet.line('BOARD', point(left, y), point(right, y));
  for (const x of [left, right]) sheet.line('BOARD', point(x, lower), point(x, 0));
  return sheet.end(point(left, lower), name, say);
}

/** The pieces that are worth a pattern, from left to right, each with its name over it. */
export async function templatesDxf(
  { layout }: Sources,
  templates: readonly Template[],
  name: string,
  say: Speaker,
): Promise<string> {
  const sheet = await DxfSheet.begin(layout.job.units);
  let left = 0;
  for (const { name: what, marks, extent } of templates) {
    const by = point(left - extent.left, -extent.bottom);
    sheet.marks(marks, by);
    sheet.words(point(left, extent.top - extent.bottom + LETTERS), say(`paper.${what}`));
    left += extent.right - extent.left + APART;
  }
  return sheet.end(point(0, 0), name, say);
}

/** As it stands: x in the direction of climbing from riser 1's face, y up from the finished lower floor. */
export async function elevationDxf({ layout }: Sources, drawing: Drawing, name: string, say: Speaker): Promise<string> {
  const sheet = await DxfSheet.begin(layout.job.units);
  sheet.marks(drawing.marks, point(0, 0));
  const shapes = drawing.marks.flatMap((mark) => (mark.kind === 'shape' ? mark.corners : []));
  const { left, bottom } = boxOf(shapes);
  return sheet.end(point(left, bottom), name, say);
}

type Library = typeof import('@tarikjabiri/dxf');

/** A file that is being drawn, in millimetres; the unit is seen to here alone. */
class DxfSheet {
  private readonly dxf: InstanceType<Library['DxfWriter']>;

  private constructor(
    private readonly library: Library,
    private readonly units: UnitSystem,
  ) {
    const { unit, measurement } = HEADER[units];
    const dxf = new library.DxfWriter();
    dxf.setUnits(unit);
    dxf.setVariable('$MEASUREMENT', { 70: measurement });
    dxf.setVariable('$LASTSAVEDBY', { 1: 'Pitchboard' });
    const long = this.scaled(12);
    const short = this.scaled(4);
    dxf.addLType(DASHED, '__ __ __', [long, -short]);
    dxf.addLType(CENTRE, '____ _ ____', [long * 2, -short, short, -short]);
    for (const [layer, [colour, kind]] of Object.entries(LAYERS)) dxf.addLayer(layer, colour, kind);
    this.dxf = dxf;
  }

  static async begin(units: UnitSystem): Promise<DxfSheet> {
    return new DxfSheet(await import('@tarikjabiri/dxf'), units);
  }

  outline(layerName: Layer, corners: readonly Point[]): void {
    const { point2d } = this.library;
    const vertices = corners.map(({ x, y }) => ({ point: point2d(this.scaled(x), this.scaled(y)) }));
    this.dxf.addLWPolyline(vertices, { flags: 1, layerName });
  }

  line(layerName: Layer, from: Point, to: Point): void {
    this.dxf.addLine(this.at(from), this.at(to), { layerName });
  }

  words(at: Point, text: string, size = LETTERS, anchor: TextMark['anchor'] = 'start'): void {
    const { TextHorizontalAlignment: across, TextVerticalAlignment: up } = this.library;
    const horizontalAlignment = { start: across.Left, middle: across.Center, end: across.Right }[anchor];
    this.dxf.addText(this.at(at), this.scaled(size), inert(text), {
      layerName: 'TEXT',
      horizontalAlignment,
      verticalAlignment: up.Middle,
      secondAlignmentPoint: this.at(at),
    });
  }

  marks(marks: readonly Mark[], by: Point): void {
    const move = ({ x, y }: Point) => point(x + by.x, y + by.y);
    for (const mark of marks) {
      if (mark.kind === 'shape') this.shape({ ...mark, corners: mark.corners.map(move) });
      else if (mark.content.kind === 'tape')
        this.figure({ ...mark, at: move(mark.at) }, tapeParts(mark.content.number));
      else this.words(move(mark.at), mark.content.text, mark.size * CAPITAL, mark.anchor);
    }
  }

  /** Its fraction on a bar, as on every other drawing: side by side it would not have the room that it was given. */
  private figure({ at, size, anchor, content }: TextMark, parts: TapeParts): void {
    const width = contentEms(content) * size;
    const left = anchor === 'start' ? at.x : anchor === 'end' ? at.x - width : at.x - width / 2;
    const [whole, stack] = [parts.whole.length * DIGIT_EM * size, fractionEms(parts) * size];
    const digits = size * CAPITAL;
    if (parts.whole !== '') this.words(point(left, at.y), parts.whole.replace('-', '−'), digits);
    if (stack > 0) {
      const middle = left + whole + stack / 2;
      this.words(point(middle, at.y + size * STACK_OFF), parts.numerator, digits * STACKED, 'middle');
      this.words(point(middle, at.y - size * STACK_OFF), parts.denominator, digits * STACKED, 'middle');
      this.line('TEXT', point(left + whole + size * 0.05, at.y), point(left + whole + stack - size * 0.05, at.y));
    }
    if (parts.heavy) this.words(point(left + whole + stack, at.y), '+', digits);
  }

  private shape({ role, corners, closed }: ShapeMark): void {
    // What is only filled has no line to follow.
    if (ROLE_PENS[role].weight === 'none') return;
    const layer = LAYER_OF[role] ?? 'DIM';
    if (closed) this.outline(layer, corners);
    else for (const [i, corner] of corners.slice(1).entries()) this.line(layer, corners[i] as Point, corner);
  }

  /** @param corner under which the proof of the unit and the name stand */
  end(corner: Point, name: string, say: Speaker): string {
    const y = corner.y - BELOW;
    const far = corner.x + PROOF[this.units];
    this.line('DIM', point(corner.x, y), point(far, y));
    for (const x of [corner.x, far]) {
      this.line('DIM', point(x - TICK / 4, y - TICK / 4), point(x + TICK / 4, y + TICK / 4));
      this.line('DIM', point(x, y - TICK / 2), point(x, y + TICK));
    }
    this.words(
      point((corner.x + far) / 2, y + LETTERS),
      say(this.units === 'imperial' ? 'dxf.proof.imperial' : 'dxf.proof.metric'),
      LETTERS,
      'middle',
    );
    this.words(point(corner.x, y - 2 * LETTERS), name);
    return this.dxf.stringify();
  }

  private at({ x, y }: Point) {
    return this.library.point3d(this.scaled(x), this.scaled(y));
  }

  private scaled(mm: number): number {
    return this.units === 'imperial' ? mmToInches(mm) : mm;
  }
}

/** The file goes by lines, `%%` and `\` start signs of their own in its texts, and `^` a control. */
function inert(text: string): string {
  const plain = plainText(text)
    .replace(/%(?=%)/g, '% ')
    .replaceAll('\\', '/')
    .replaceAll('^', "'");
  return Array.from(plain).slice(0, LONGEST).join('');
}

/**
 * Templates → pages. A triangle that fits goes on one sheet with its words in the blank half; all
 * else is cut into as few sheets as its paper allows, upright or lying, whichever needs fewer.
 */
import { point } from '../geometry/point';
import type { StairPlan } from '../plan/planStair';
import { type Foot, onFoot } from '../stringer/stringer';
import { areaBefore, type Correction } from './correction';
import type { Box, Mark } from './drawing';
import { boxHeight, boxWidth, type PageDraft, type PaperWords, type TextMeasure, type Tile } from './page';
import { contentOf, edgeWords } from './pageFrame';
import { PageSketch, PRINT } from './pageSketch';
import { liveArea, ownArea, type PaperName, type Sheet, sheetOf, type Turn } from './paper';
import { makeMarksStrip, makePoleStrip } from './strips';
import { type Hand, mirrored, type Template, type TemplateName } from './template';
import { type Maker, makeHeel, makeStringer, makeTopEnd, makeTriangle } from './templates';
import { lanesOn, marksInTile, type Room, sheetsFor, type Window, windowsOf } from './tiles';

export interface TemplateOptions {
  readonly paper: PaperName;
  readonly hand: Hand;
  readonly correction: Correction;
}

const MAKERS: Readonly<Record<TemplateName, Maker>> = {
  triangle: makeTriangle,
  heel: makeHeel,
  topEnd: makeTopEnd,
  stringer: makeStringer,
  marksStrip: makeMarksStrip,
  poleStrip: makePoleStrip,
};

/** The line of tile numbers over what is cut out. */
const EDGE_LINE = 6;
const MAP_CELL = { width: 4, height: 3 };
const MAP_WIDTH = { sheets: 20, lanes: 40 };
/** Room for the number of an edge. */
const EDGE_NUMBER = 22;
/** Past the first edge's number. */
const MAP_AT = 24;

export function makeTemplate(
  name: TemplateName,
  plan: Pick<StairPlan, 'layout' | 'sheet'>,
  hand: Hand,
  words: PaperWords,
  measure: TextMeasure,
): Template {
  const template = MAKERS[name](plan, words, measure);
  return hand === 'left' && template.hand !== null ? mirrored(template) : template;
}

/** @returns the sheets of one template, still without their frames */
export function draftTemplate(
  name: TemplateName,
  plan: Pick<StairPlan, 'layout' | 'sheet'>,
  options: TemplateOptions,
  words: PaperWords,
  measure: TextMeasure,
): readonly PageDraft[] {
  const { feet, master } = plan.layout.stringer;
  if ((name !== 'heel' && name !== 'stringer') || master.stringer === 0) {
    return draftOne(name, plan, options, words, measure);
  }
  // A heel for each stringer whose foot differs; the whole board once, and it says whose it is.
  return (name === 'heel' ? feet : [master]).flatMap((foot) => {
    const title = words(name === 'heel' ? 'heelOf' : 'stringerOf', { stringer: foot.stringer, count: feet.length });
    const others = name === 'heel' ? '' : words('othersShorter');
    return draftOne(name, standingOn(plan, foot), options, words, measure).map((draft) => ({
      ...draft,
      title,
      under: [draft.under, others].filter((part) => part !== '').join(' '),
    }));
  });
}

function standingOn({ layout, sheet }: Pick<StairPlan, 'layout' | 'sheet'>, foot: Foot) {
  const own = sheet.feet.find(({ stringer }) => stringer === foot.stringer);
  return {
    layout: { ...layout, stringer: onFoot(layout.stringer, foot) },
    sheet: own === undefined ? sheet : { ...sheet, toeHeight: own.toeHeight, diagonal: own.diagonal },
  };
}

function draftOne(
  name: TemplateName,
  plan: Pick<StairPlan, 'layout' | 'sheet'>,
  options: TemplateOptions,
  words: PaperWords,
  measure: TextMeasure,
): readonly PageDraft[] {
  const template = makeTemplate(name, plan, options.hand, words, measure);
  const whole = name === 'triangle' ? triangleSheet(template, plan, options, words) : null;
  if (whole !== null) return [whole];
  return new Cutter(template, plan, options, words, measure).drafts();
}

/** The whole notch on one lying sheet, up to the edge of what its own margins leave, or null if it does not fit. */
function triangleSheet(
  template: Template,
  { layout }: Pick<StairPlan, 'layout'>,
  options: TemplateOptions,
  words: PaperWords,
): PageDraft | null {
  if (options.paper === 'roll36') return null;
  const sheet = sheetOf(options.paper, 'lying');
  const live = areaBefore(sheet, ownArea(sheet), options.correction);
  const { run, unitRise, sin, cos } = layout.flight;
  const inset = layout.stringer.tipInset;
  const [width, height] = [run + sin * inset, unitRise + cos * inset];
  if (width > boxWidth(live) || height > boxHeight(live)) return null;
  const right = options.hand === 'right';
  const side = right ? 1 : -1;
  // The corner of the two cuts goes into a corner of the sheet.
  const dx = right ? live.right - run : live.left + run;
  const dy = live.bottom;
  const move = (mark: Mark): Mark =>
    mark.kind === 'text'
      ? { ...mark, at: point(mark.at.x + dx, mark.at.y + dy) }
      : { ...mark, corners: mark.corners.map(({ x, y }) => point(x + dx, y + dy)) };
  const { extent } = template;
  const at = point(extent.left + dx, extent.bottom + dy);
  return {
    name: 'triangle',
    sheet,
    live,
    title: words('triangle'),
    under: handWords(template, words),
    scale: { kind: 'true' },
    marks: template.marks.map(move),
    tiles: [{ row: 0, column: 0, rows: 1, columns: 1, window: extent, at }],
    frame: {
      blankLeft: right,
      low: point(dx, dy + inset / cos),
      high: point(side * run + dx, unitRise + dy + inset / cos),
      steps: [words('step1'), words('step2'), words('step3'), words('step4')],
    },
  };
}

function handWords({ hand }: Template, words: PaperWords): string {
  if (hand === null) return '';
  return words(hand === 'right' ? 'handRight' : 'handLeft');
}

function howWords({ name }: Template, words: PaperWords): string {
  return name === 'marksStrip' || name === 'poleStrip' ? words(`${name}How`) : '';
}

interface Cut {
  readonly sheet: Sheet;
  readonly live: Box;
  readonly room: Room;
  readonly windows: readonly Window[];
}

class Cutter {
  private readonly units: StairPlan['layout']['job']['units'];

  constructor(
    private readonly template: Template,
    plan: Pick<StairPlan, 'layout'>,
    private readonly options: TemplateOptions,
    private readonly words: PaperWords,
    private readonly measure: TextMeasure,
  ) {
    this.units = plan.layout.job.units;
  }

  drafts(): readonly PageDraft[] {
    const { template } = this;
    const best = this.bestCut();
    const perSheet = template.isStrip ? lanesOn(template, best.room) : 1;
    const count = Math.ceil(best.windows.length / perSheet);
    return Array.from({ length: count }, (_, i) =>
      this.draft(best, best.windows.slice(i * perSheet, (i + 1) * perSheet)),
    );
  }

  /** The fewest sheets; among equals, lying. */
  private bestCut(): Cut {
    const turns: readonly Turn[] = this.options.paper === 'roll36' ? ['lying'] : ['lying', 'upright'];
    const cuts = turns.map((turn) => this.cut(turn));
    const sheets = ({ windows, room }: Cut) => sheetsFor(windows, this.template, room);
    return cuts.reduce((best, cut) => (sheets(cut) < sheets(best) ? cut : best));
  }

  private cut(turn: Turn): Cut {
    const { template, options } = this;
    const wanted = boxWidth(template.extent) + 40;
    const sheet = sheetOf(options.paper, turn, wanted * Math.max(1, 1 / options.correction.long));
    const live = areaBefore(sheet, liveArea(sheet), options.correction);
    const content = contentOf(live);
    const room = { width: boxWidth(content), height: boxHeight(content) - EDGE_LINE };
    // A strip is one lane high whatever the sheet; everything else may be cut both ways.
    const height = template.isStrip ? boxHeight(template.extent) : room.height;
    return { sheet, live, room, windows: windowsOf(template, { ...room, height }, this.units) };
  }

  private draft({ sheet, live, windows }: Cut, shown: readonly Window[]): PageDraft {
    const { template, words, measure } = this;
    const content = contentOf(live);
    const sketch = new PageSketch(measure);
    const lane = boxHeight(template.extent);
    const marks: Mark[] = [];
    const tiles = shown.map((window, i): Tile => {
      const height = boxHeight(window.window);
      const spare = template.isStrip || windows.length > 1 ? 0 : (boxWidth(content) - boxWidth(window.window)) / 2;
      const y = content.top - EDGE_LINE - height - i * lane;
      return { ...window, at: point(content.left + spare, y) };
    });
    for (const tile of tiles) {
      marks.push(...marksInTile(template, tile, windows, measure));
      if (windows.length > 1) this.numberEdges(sketch, tile, windows, content);
    }
    if (windows.length > 1) this.map(sketch, tiles[0]?.at.x ?? content.left, content, windows, shown);
    const how = point(content.right, content.top - EDGE_LINE / 2);
    const room = boxWidth(content) - MAP_AT - MAP_WIDTH.lanes - 4;
    sketch.fitted('small', how, howWords(template, words), PRINT.small, room, 'end');
    return {
      name: template.name,
      sheet,
      live,
      title: words(template.name),
      under: handWords(template, words),
      scale: { kind: 'true' },
      marks: [...marks, ...sketch.marks],
      tiles,
      frame: 'edges',
    };
  }

  /** How far each edge of the sheet is from the datum: what a tape is laid to. */
  private numberEdges(
    sketch: PageSketch,
    { window, at, row, rows, column }: Tile,
    windows: readonly Window[],
    content: Box,
  ): void {
    const { template, words, units } = this;
    const { datum } = template;
    const right = at.x + boxWidth(window);
    const y = template.isStrip ? at.y + boxHeight(window) / 2 : at.y + boxHeight(window) + 3;
    const away = template.hand === 'left' ? -1 : 1;
    const edge = (x: number) => edgeWords((x - datum.x) * away, units);
    // Past the cross on a lane's seam.
    const inward = template.isStrip ? 12 : 1;
    sketch.words('body-strong', point(at.x + inward, y), `← ${edge(window.left)}`, PRINT.body);
    sketch.words('body-strong', point(right - inward, y), `${edge(window.right)} →`, PRINT.body, 'end');
    const heights =
      rows > 1
        ? words('tileHeights', {
            lower: edgeWords(window.bottom - datum.y, units),
            upper: edgeWords(window.top - datum.y, units),
          })
        : '';
    const index = windows.findIndex((one) => one.window === window);
    const place = { tile: index + 1, tiles: windows.length, row: row + 1, column: column + 1 };
    const name = words(rows > 1 ? 'tileAt' : 'tile', place);
    const text = [name, words(template.along), heights].filter((part) => part !== '').join(' · ');
    if (template.isStrip) sketch.words('small', point((at.x + right) / 2, y), text, PRINT.small, 'middle');
    else this.besideMap(sketch, text, { left: at.x, right, y }, content);
  }

  /** After the small plan, between the two numbers; a narrow piece leaves room on its right. */
  private besideMap(
    sketch: PageSketch,
    text: string,
    { left, right, y }: { readonly left: number; readonly right: number; readonly y: number },
    content: Box,
  ): void {
    const start = left + MAP_AT + MAP_WIDTH.sheets + 3;
    const room = right - EDGE_NUMBER - start;
    if (sketch.width(text, PRINT.small, false) > room && content.right - right > EDGE_NUMBER * 2) {
      sketch.paragraph('small', right + 6, y - 8, content.right - right - 6, text, PRINT.small);
    } else sketch.fitted('small', point(start, y), text, PRINT.small, room);
  }

  /** Which of the sheets or lanes these are: the small plan of all of them, with these crossed out. */
  private map(
    sketch: PageSketch,
    from: number,
    content: Box,
    windows: readonly Window[],
    shown: readonly Window[],
  ): void {
    const [{ columns, rows }] = windows as readonly [Window];
    const most = this.template.isStrip ? MAP_WIDTH.lanes : MAP_WIDTH.sheets;
    const width = Math.min(MAP_CELL.width, most / columns);
    const height = Math.min(MAP_CELL.height, 6 / rows);
    const last = shown.at(-1)?.window;
    // A piece too narrow for both its numbers and the plan has the plan on its right.
    const shownWidth = last === undefined ? 0 : boxWidth(last);
    const isNarrow = !this.template.isStrip && shownWidth < 2 * EDGE_NUMBER + MAP_WIDTH.sheets + 6;
    const left = isNarrow ? from + shownWidth + 6 : from + MAP_AT;
    const top = content.top - EDGE_LINE / 2 + (rows * height) / 2;
    for (const window of windows) {
      const cell = {
        left: left + window.column * width,
        right: left + (window.column + 1) * width,
        top: top - window.row * height,
        bottom: top - (window.row + 1) * height,
      };
      sketch.box('rule', cell);
      if (!shown.includes(window)) continue;
      sketch.line('rule', point(cell.left, cell.bottom), point(cell.right, cell.top));
      sketch.line('rule', point(cell.left, cell.top), point(cell.right, cell.bottom));
    }
  }
}

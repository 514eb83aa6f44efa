/**
 * What stands on every page: title, job and revision, which page of how many, units, scale, proof
 * bars with their diagonal, and whether the printer was corrected for.
 */
import { point } from '../geometry/point';
import { inch } from '../units/exact';
import { tapeNumber, tapeText } from '../units/format';
import { corrected, isCorrected } from './correction';
import type { Box } from './drawing';
import type { Page, PageDraft, PageFacts, PaperWords, TextMeasure, Wedge } from './page';
import { cutToFit, LEADING, PageSketch, PRINT, wrap } from './pageSketch';
import { BAR_HALF, type Bars, drawBars } from './proofBars';

const SIDE = 2 * BAR_HALF + 1;
const FOOT = 2 * BAR_HALF + 5;
const HEAD = 13;
/** The upright bar's label stands over its end. */
const BAR_LABEL = 14;
const UNDER_LABEL = 9.5;
/** Air between a slope and what stands beside it. */
const OFF_SLOPE = 6;
const DIAGONAL_STEP = inch(1 / 32);

/** What bars, head and foot leave of the live area. */
export function contentOf(live: Box): Box {
  return { left: live.left + SIDE, right: live.right, bottom: live.bottom + FOOT, top: live.top - HEAD };
}

/** Gives every page its frame, and corrects it for the printer. */
export function furnish(
  drafts: readonly PageDraft[],
  facts: PageFacts,
  words: PaperWords,
  measure: TextMeasure,
): readonly Page[] {
  return drafts.map((draft, index) => {
    const sketch = new PageSketch(measure);
    const frame = new Frame(sketch, draft, facts, words, words('pageOf', { page: index + 1, pages: drafts.length }));
    if (draft.frame === 'edges') frame.alongEdges();
    else frame.inWedge(draft.frame);
    const { name, sheet, scale, tiles } = draft;
    return { name, sheet, scale, tiles, marks: corrected([...draft.marks, ...sketch.marks], sheet, facts.correction) };
  });
}

class Frame {
  constructor(
    private readonly sketch: PageSketch,
    private readonly draft: PageDraft,
    private readonly facts: PageFacts,
    private readonly words: PaperWords,
    private readonly pageOf: string,
  ) {}

  alongEdges(): void {
    const { sketch, draft } = this;
    const { live } = draft;
    const corner = point(live.left + BAR_HALF, live.bottom + BAR_HALF);
    const bars = drawBars(sketch, corner, live.right - corner.x, live.top - UNDER_LABEL - corner.y);
    this.head(bars);
    const barLabel = this.barWords(bars.across);
    const footY = live.bottom + 2 * BAR_HALF + 2;
    sketch.words('small', point(live.right, footY), barLabel, PRINT.small, 'end');
    const room = live.right - live.left - SIDE - sketch.width(barLabel, PRINT.small, false) - 5;
    sketch.fitted('small', point(live.left + SIDE, footY), this.footWords().join(' · '), PRINT.small, room);
  }

  private head(bars: Bars): void {
    const { sketch, draft, facts } = this;
    const { live } = draft;
    const left = live.left + BAR_LABEL;
    const firstY = live.top - 3;
    const secondY = live.top - 9;
    const inches = this.words('barInches', { inches: halves(bars.up.inches) });
    sketch.words('small', point(live.left, live.top - 2.4), inches, PRINT.small);
    sketch.words('small', point(live.left, live.top - 6.6), this.words('barMm', { mm: bars.up.mm }), PRINT.small);
    const title = cutToFit(draft.title, ((live.right - left) * 0.55) / PRINT.title, true, sketch.measure);
    sketch.words('heading', point(left, firstY), title, PRINT.title);
    const used = sketch.width(title, PRINT.title, true) + 6;
    sketch.fitted('body', point(live.right, firstY), facts.job, PRINT.body, live.right - left - used, 'end');
    const proof = this.proofWords(bars);
    sketch.words('small', point(live.right, secondY), proof, PRINT.small, 'end');
    const room = live.right - left - sketch.width(proof, PRINT.small, false) - 5;
    const under = facts.draft ? `${this.words('draft')} ${draft.under}` : draft.under;
    sketch.fitted(facts.draft ? 'body-strong' : 'body', point(left, secondY), under, PRINT.body, room);
  }

  /** All of it in the blank corner over a triangle. */
  inWedge(wedge: Wedge): void {
    const { sketch, draft, facts } = this;
    const { live } = draft;
    const side = wedge.blankLeft ? 1 : -1;
    const cornerX = wedge.blankLeft ? live.left + BAR_HALF : live.right - BAR_HALF;
    const corner = point(cornerX, live.top - BAR_HALF);
    const slopeX = (y: number) => {
      if (y >= wedge.high.y) return wedge.blankLeft ? live.right : live.left;
      const share = (y - wedge.low.y) / (wedge.high.y - wedge.low.y);
      return wedge.low.x + (wedge.high.x - wedge.low.x) * share - side * OFF_SLOPE;
    };
    const tickY = corner.y - BAR_HALF;
    const slopeAtSide = wedge.low.y + Math.max(0, slopeY(wedge, cornerX + side * BAR_HALF) - wedge.low.y);
    const bars = drawBars(sketch, corner, slopeX(tickY - 1) - corner.x, slopeAtSide + OFF_SLOPE - corner.y);
    const start = cornerX + side * (BAR_HALF + 4);
    let y = tickY - 3;
    const set = (role: 'heading' | 'body' | 'body-strong' | 'small', text: string, size: number) => {
      const roomAt = (line: number) => Math.abs(slopeX(y - size * LEADING * (line + 1)) - start) / size;
      for (const line of wrap(text, roomAt, role === 'heading' || role === 'body-strong', sketch.measure)) {
        sketch.words(role, point(start, y - (size * LEADING) / 2), line, size, wedge.blankLeft ? 'start' : 'end');
        y -= size * LEADING;
      }
    };
    set('heading', draft.title, PRINT.title);
    set('body', draft.under, PRINT.body);
    set('small', cutToFit(facts.job, 100 / PRINT.small, false, sketch.measure), PRINT.small);
    if (facts.draft) set('body-strong', this.words('draft'), PRINT.body);
    y -= 1.5;
    for (const step of wedge.steps) set('body', step, PRINT.body);
    y -= 1.5;
    set('small', [this.barWords(bars.across), this.barWords(bars.up)].join(' | '), PRINT.small);
    set('small', this.proofWords(bars), PRINT.small);
    set('small', this.footWords().join(' · '), PRINT.small);
  }

  private footWords(): readonly string[] {
    const { draft, facts, words, pageOf } = this;
    const { scale } = draft;
    return [
      pageOf,
      words('revision', { revision: facts.revision }),
      words(facts.units === 'imperial' ? 'inches' : 'millimetres'),
      scale.kind === 'true'
        ? words('scaleTrue')
        : scale.kind === 'ratio'
          ? words('scaleRatio', { ratio: scale.ratio.toFixed(1) })
          : words('scaleNone'),
    ];
  }

  private proofWords({ diagonal }: Bars): string {
    const { words } = this;
    const { short, long } = this.facts.correction;
    const inches = tapeText(tapeNumber(diagonal, DIAGONAL_STEP));
    const proof = words('diagonal', { inches, mm: diagonal.toFixed(1) });
    const printer = isCorrected(this.facts.correction)
      ? words('corrected', { short: short.toFixed(4), long: long.toFixed(4) })
      : words('notCorrected');
    return `${proof} · ${printer}`;
  }

  private barWords({ inches, mm }: Bars['across']): string {
    return `${this.words('barInches', { inches: halves(inches) })} · ${this.words('barMm', { mm })}`;
  }
}

function slopeY({ low, high }: Wedge, x: number): number {
  const share = (x - low.x) / (high.x - low.x);
  return share < 0 ? low.y : low.y + (high.y - low.y) * share;
}

/** `9 1/2`: a bar ends on a half inch. */
function halves(inches: number): string {
  return Number.isInteger(inches) ? `${inches}` : `${Math.floor(inches)} 1/2`;
}

/** A tile's edge on the tape: on the grid, so nothing is rounded away. */
export function edgeWords(mm: number, units: PageFacts['units']): string {
  const text = units === 'metric' ? String(Math.round(mm * 10) / 10 + 0) : tapeText(tapeNumber(mm, DIAGONAL_STEP));
  return text.replace('-', '−');
}

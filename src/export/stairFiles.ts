/**
 * Everything that can be taken away from a stair, each as one call that answers with a file or with
 * the reason why there is none. A stair that fails its own check gives nothing, in any form.
 */
import type { LumberBook } from '../core/carry/lumber';
import { checkLayout, checkSheet } from '../core/check/checkLayout';
import { type Correction, readCorrection, UNCORRECTED } from '../core/drawing/correction';
import type { Drawing } from '../core/drawing/drawing';
import { drawElevation } from '../core/drawing/elevation';
import type { PageFacts } from '../core/drawing/page';
import { furnish } from '../core/drawing/pageFrame';
import type { PaperName } from '../core/drawing/paper';
import type { Hand, TemplateName } from '../core/drawing/template';
import { draftTemplate, makeTemplate } from '../core/drawing/templatePages';
import type { JobText } from '../core/job/jobText';
import type { JudgedPlan } from '../core/plan/planStair';
import { failure, problem, type Result, success } from '../core/result';
import '../text/lateFigures';
import '../text/lateFindings';
import '../text/lateSoon';
import '../text/lateCarry';
import '../text/latePaper';
import type { Speaker } from '../text/say';
import { elevationDxf, stringerDxf, templatesDxf } from './dxf';
import { exportName } from './fileNames';
import { type Fonts, loadFonts } from './font/fonts';
import { cutListCsv, marksCsv } from './lists';
import { pdfOf } from './pdf';
import { plainText } from './plainText';
import { drawingWords } from './sheets/leaf';
import { packagePages, paperWords } from './sheets/packagePages';
import type { PackageSheet } from './sheets/sheetNames';
import { svgOf } from './svg';

export interface StairSource {
  readonly job: JobText;
  readonly plan: JudgedPlan;
  readonly say: Speaker;
}

export interface PaperChoice {
  readonly paper: PaperName;
  readonly hand: Hand;
  readonly revision: string;
  /** Of the whole stringer; left out, the roll: on small sheets it comes in some thirty pieces. */
  readonly stringerPaper?: PaperName;
  /** Factors of the printer, measured ÷ nominal; left out: as the printer comes. */
  readonly correction?: Correction;
}

export interface ExportedFile {
  readonly name: string;
  readonly type: string;
  readonly content: Uint8Array;
}

/** Size of the view that an exported elevation is made for, in pixels. */
const ELEVATION_VIEW = { width: 1180, height: 760 };
/** Pens of a drawing at full size: half a millimetre for a wide one. */
const TRUE_PIXEL = 0.26;

export async function packageFile(
  source: StairSource,
  choice: PaperChoice & { readonly sheets: readonly PackageSheet[]; readonly lumber: LumberBook },
): Promise<Result<ExportedFile>> {
  return exported(source, 'package.pdf', 'application/pdf', choice, async (facts, fonts) =>
    pdfOf(packagePages(source, choice, facts, source.say, fonts.measure), fonts),
  );
}

/** @param choice.templates in the order in which they are printed */
export async function templatesFile(
  source: StairSource,
  choice: PaperChoice & { readonly templates: readonly TemplateName[]; readonly what: string },
): Promise<Result<ExportedFile>> {
  return exported(source, `${choice.what}.pdf`, 'application/pdf', choice, async (facts, fonts) => {
    const options = { paper: choice.paper, hand: choice.hand, correction: facts.correction };
    const words = paperWords(source.say);
    const drafts = choice.templates.flatMap((name) => draftTemplate(name, source.plan, options, words, fonts.measure));
    return pdfOf(furnish(drafts, facts, words, fonts.measure), fonts);
  });
}

/** The pieces that are worth a pattern. */
const PATTERNS: readonly TemplateName[] = ['triangle', 'heel', 'topEnd'];

export function patternsFile(source: StairSource, choice: PaperChoice): Promise<Result<ExportedFile>> {
  return templatesFile(source, { ...choice, templates: PATTERNS, what: 'templates' });
}

export function stripsFile(source: StairSource, choice: PaperChoice): Promise<Result<ExportedFile>> {
  return templatesFile(source, { ...choice, templates: ['marksStrip', 'poleStrip'], what: 'strips' });
}

export function wholeStringerFile(source: StairSource, choice: PaperChoice): Promise<Result<ExportedFile>> {
  const paper = choice.stringerPaper ?? 'roll36';
  const what = paper === 'roll36' ? 'stringer-roll-36in' : `stringer-${paper}`;
  return templatesFile(source, { ...choice, paper, templates: ['stringer'], what });
}

export async function dxfFile(source: StairSource, choice: PaperChoice): Promise<Result<ExportedFile>> {
  return exportedDxf(source, 'stringer', choice, (name) => stringerDxf(source.plan, name, source.say));
}

export async function templatesDxfFile(source: StairSource, choice: PaperChoice): Promise<Result<ExportedFile>> {
  return exportedDxf(source, 'templates', choice, async (name, { measure }) => {
    const words = paperWords(source.say);
    const pieces = PATTERNS.map((piece) => makeTemplate(piece, source.plan, choice.hand, words, measure));
    return templatesDxf(source.plan, pieces, name, source.say);
  });
}

export async function elevationDxfFile(source: StairSource, choice: PaperChoice): Promise<Result<ExportedFile>> {
  return exportedDxf(source, 'elevation', choice, (name) => {
    const drawing = drawElevation(source.plan, ELEVATION_VIEW, drawingWords(source.say));
    return elevationDxf(source.plan, drawing, name, source.say);
  });
}

/** Named with its unit, where the file itself may not be believed. */
function exportedDxf(
  source: StairSource,
  what: string,
  choice: PaperChoice,
  write: (name: string, fonts: Fonts) => Promise<string>,
): Promise<Result<ExportedFile>> {
  const unit = source.plan.layout.job.units === 'imperial' ? 'in' : 'mm';
  return exported(source, `${what}-${unit}.dxf`, 'image/vnd.dxf', choice, async (facts, fonts) =>
    bytes(await write(`${facts.job} · ${facts.revision}`, fonts)),
  );
}

export async function cutListFile(source: StairSource, choice: PaperChoice): Promise<Result<ExportedFile>> {
  return exported(source, 'cut-list.csv', 'text/csv', choice, async () => bytes(cutListCsv(source.plan, source.say)));
}

export async function marksFile(source: StairSource, choice: PaperChoice): Promise<Result<ExportedFile>> {
  return exported(source, 'marks.csv', 'text/csv', choice, async () => bytes(marksCsv(source.plan, source.say)));
}

export async function elevationFile(source: StairSource, choice: PaperChoice): Promise<Result<ExportedFile>> {
  return exported(source, 'elevation.svg', 'image/svg+xml', choice, async (facts) => {
    const drawing = drawElevation(source.plan, ELEVATION_VIEW, drawingWords(source.say));
    return bytes(svgOf(drawing, `${source.say('drawing.elevation')}: ${facts.job}`));
  });
}

/** @param paint makes a picture of the elevation, or null where it cannot; the command has no canvas to do it on */
export async function pictureFile(
  source: StairSource,
  choice: PaperChoice,
  paint: (drawing: Drawing, fonts: Fonts) => Promise<Uint8Array | null>,
): Promise<Result<ExportedFile>> {
  const facts = factsOf(source, choice);
  if (!facts.ok) return facts;
  const drawing = drawElevation(source.plan, ELEVATION_VIEW, drawingWords(source.say));
  const painted = await paint(drawing, await loadFonts());
  if (painted === null) return failure([problem(source.plan.layout.job.place, 'paper.noPicture', {})]);
  return exported(source, 'elevation.png', 'image/png', choice, async () => painted);
}

/** The whole stringer with one millimetre to the millimetre, for a plotter or a laser cutter. */
export async function stringerSvgFile(source: StairSource, choice: PaperChoice): Promise<Result<ExportedFile>> {
  return exported(source, 'stringer-full-size.svg', 'image/svg+xml', choice, async (facts, fonts) => {
    const { marks, extent } = makeTemplate('stringer', source.plan, choice.hand, paperWords(source.say), fonts.measure);
    const drawing: Drawing = { marks, frame: extent, perPixel: TRUE_PIXEL };
    return bytes(svgOf(drawing, `${source.say('paper.stringer')}: ${facts.job}`, 'true'));
  });
}

type Maker = (facts: PageFacts, fonts: Fonts) => Promise<Uint8Array>;

async function exported(
  source: StairSource,
  what: string,
  type: string,
  choice: PaperChoice,
  make: Maker,
): Promise<Result<ExportedFile>> {
  const facts = factsOf(source, choice);
  if (!facts.ok) return facts;
  const content = await make(facts.value, await loadFonts());
  const { job } = source.plan.layout;
  return success({ name: exportName(job.name === '' ? job.id : job.name, what), type, content });
}

/** What stands on every page, or why nothing may leave. */
export function factsOf({ job, plan }: StairSource, choice: PaperChoice): Result<PageFacts> {
  const { layout, sheet } = plan;
  const [fault] = [...checkLayout(layout), ...checkSheet(layout, sheet)];
  if (fault !== undefined) {
    const { what, step, expected, found } = fault;
    return failure([problem(layout.job.place, 'check.failed', { what, step, expectedMm: expected, foundMm: found })]);
  }
  const { short, long } = choice.correction ?? UNCORRECTED;
  const correction = readCorrection(short, long);
  if (!correction.ok) return correction;
  const names = [job.name ?? '', layout.job.name === '' ? layout.job.id : layout.job.name].map(plainText);
  return success({
    units: layout.job.units,
    revision: Array.from(plainText(choice.revision)).slice(0, 24).join(''),
    job: names.filter((name) => name !== '').join(' · '),
    draft: layout.draft,
    correction: correction.value,
  });
}

function bytes(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

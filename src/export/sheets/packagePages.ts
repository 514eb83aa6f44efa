/** The package that goes to the site: the sheets that were asked for, each in its frame. */

import type { LumberBook } from '../../core/carry/lumber';
import { areaBefore } from '../../core/drawing/correction';
import type { Page, PageDraft, PageFacts, PaperWords, TextMeasure } from '../../core/drawing/page';
import { contentOf, furnish } from '../../core/drawing/pageFrame';
import { liveArea, type PaperName, sheetOf } from '../../core/drawing/paper';
import type { JobText } from '../../core/job/jobText';
import type { JudgedPlan } from '../../core/plan/planStair';
import type { Speaker } from '../../text/say';
import { makeCarry } from './carrySheet';
import { makeCautions } from './cautions';
import { makeCover } from './cover';
import { makeCutList } from './cutListSheet';
import { makeDetails, makeElevation } from './drawings';
import { makeFindings } from './findingsSheet';
import { makeHeights } from './heights';
import { makeInspection } from './inspection';
import type { LeafMaker } from './leaf';
import type { PackageSheet } from './sheetNames';
import { makeStringerSheet } from './stringerSheet';
import { makeSurvey } from './survey';
import { makeTreadSchedule } from './treadSchedule';

const MAKERS: Readonly<Record<PackageSheet, LeafMaker>> = {
  cover: makeCover,
  survey: makeSurvey,
  elevation: makeElevation,
  details: makeDetails,
  stringer: makeStringerSheet,
  heights: makeHeights,
  cutList: makeCutList,
  treads: makeTreadSchedule,
  findings: makeFindings,
  carry: makeCarry,
  cautions: makeCautions,
  inspection: makeInspection,
};

export interface PackageChoice {
  readonly sheets: readonly PackageSheet[];
  readonly paper: PaperName;
  /** What the program knows of wood. */
  readonly lumber: LumberBook;
}

export function packagePages(
  { job, plan }: { readonly job: JobText; readonly plan: JudgedPlan },
  { sheets, paper, lumber }: PackageChoice,
  facts: PageFacts,
  say: Speaker,
  measure: TextMeasure,
): readonly Page[] {
  // A roll is for full size; what is read goes on a sheet that can be held.
  const sheet = sheetOf(paper === 'roll36' ? 'tabloid' : paper, 'lying');
  const live = areaBefore(sheet, liveArea(sheet), facts.correction);
  const context = { job, lumber, plan, say, measure, content: contentOf(live) };
  const drafts = sheets.flatMap((name) =>
    MAKERS[name](context).map((leaf): PageDraft => ({ ...leaf, name, sheet, live, tiles: [], frame: 'edges' })),
  );
  return furnish(drafts, facts, paperWords(say), measure);
}

export function paperWords(say: Speaker): PaperWords {
  return (key, values) => say(`paper.${key}`, values);
}

/** One stair's plan as the command answers it: docs/job-file.md lists every key. Millimetres, degrees. */
import type { JudgedPlan } from '../core/plan/planStair';
import { type Speaker, sayProblem } from '../text/say';

const DEGREES = 180 / Math.PI;

export function answerStair(plan: JudgedPlan, say: Speaker) {
  const { layout } = plan;
  const { flight, stringer, opening, width, rips, job } = layout;
  return {
    id: job.id,
    name: job.name,
    draft: layout.draft,
    unknowns: job.unknowns,
    defaults: plan.defaults,
    notes: plan.notes.map((note) => sayProblem(say, note, job.units)),
    totalRise: flight.totalRise,
    risers: flight.risers,
    unitRise: flight.unitRise,
    treads: flight.treads,
    run: flight.run,
    totalRun: stringer.top.hung ? flight.runToTopRiser : stringer.top.endX,
    pitchDegrees: flight.pitch * DEGREES,
    stepLength: flight.stepLength,
    twoRisePlusRun: 2 * flight.unitRise + flight.run,
    notchDepth: stringer.notchDepth,
    gaugeLine: stringer.gaugeLine,
    throat: stringer.throat,
    firstRiserCut: stringer.heel.firstRiserCut,
    drop: stringer.heel.drop,
    seat: stringer.heel.seat,
    plumbCut: stringer.top.plumbCut,
    lastLevelCut: stringer.top.lastLevelCut,
    topBelowFinish: stringer.top.topBelowFinish,
    topBelowSubfloor: stringer.top.topBelowSubfloor,
    stringerEnd: stringer.top.endX,
    headerFace: stringer.top.headerX,
    boardLength: stringer.boardLength,
    stockLength: stringer.stockLength,
    firstMark: stringer.firstMark,
    diagonal: stringer.diagonal,
    marks: stringer.marks,
    cornerMarks: stringer.cornerMarks,
    outline: stringer.outline.map(({ x, y }) => [x, y]),
    finishedTops: flight.finishedTops,
    asCut: stringer.asCut,
    treadDepth: rips.treadDepth,
    lastTreadDepth: rips.lastTreadDepth,
    riserHeights: rips.riserHeights,
    riserOpening: rips.riserOpening,
    topRiserBoard: rips.topRiserBoard,
    hangerHeight: rips.hangerHeight,
    feet:
      stringer.master.stringer === 0
        ? null
        : stringer.feet.map(({ stringer: which, across, heel, diagonal }) => ({
            stringer: which,
            across,
            firstRiserCut: heel.firstRiserCut,
            seat: heel.seat,
            diagonal,
          })),
    headroom: opening.headroom,
    openingNeeded: opening.needed,
    obstacles: layout.obstacles.map(({ clearance, worstX }) => ({ clearance, at: worstX })),
    headerContact: stringer.bearing.contact,
    headerDepthNeeded: stringer.bearing.depthNeeded,
    width: width && {
      finished: width.finished,
      betweenSkirts: width.betweenSkirts,
      stringers: width.stringers,
      spacing: width.spacing,
      treadLength: width.treadLength,
    },
    findings: plan.findings.map(({ field, kind, status, actual, limit, unit, section, source }) => ({
      field,
      kind,
      status,
      actual,
      limit,
      unit,
      section,
      source,
    })),
  };
}

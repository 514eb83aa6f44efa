/** UK words of the work itself: cutting, setting, what stands where, and what the rules ask of rails and guarding. */
import type { carryEn } from './carry.en';
import type { formulasEn } from './formulas.en';
import type { measuredEn } from './measured.en';
import type { paperEn } from './paper.en';
import type { problemsEn } from './problems.en';
import type { rulesEn } from './rules.en';
import type { screenEn } from './screen.en';

type WorkKey =
  | keyof typeof carryEn
  | keyof typeof formulasEn
  | keyof typeof measuredEn
  | keyof typeof paperEn
  | keyof typeof problemsEn
  | keyof typeof rulesEn
  | keyof typeof screenEn;

export const ukWork: Partial<Record<WorkKey, string>> = {
  'problem.slope.pastSquare':
    'the floor falls toward the trimmer so steeply that the string could not stand on it; check what it falls and over what length',
  'problem.toe.noneOnSlope':
    '{stringer, plural, =0 {nothing is left of the first cut} other {nothing is left of the first cut of string #, counted from the left}}: the floor there lies {shortMm} higher than the first cut; check what the floor falls and over what length',
  'note.slopeNoWidth':
    'the floor falls across the stair, but no toe height was computed for each string, only that on the centre line: survey.widthFraming is not given, or leaves no room',

  'field.survey.readingFromHeader': 'Tape stood out from the trimmer',
  'field.survey.fallAlong': 'Floor falls away from the trimmer',
  'measure.fall.again': 'Mark {mark} out from the trimmer and measure the rise there again: it should read {rise}.',
  'measure.fall.noWidth':
    'Without a framed width nobody can say where each string stands, so there is one toe height, on the centre line. Measure the width.',
  'problem.obstacle.order':
    'the far end must not be nearer to the trimmer than the near end, {nearMm}; the near end is the one towards the trimmer',
  'finding.obstacle': 'Clearance under overhead {number}, plumb from the pitch line',
  'measure.how.overhead':
    'Every beam, duct or sloping ceiling over the flight. Level, from the face of the trimmer that carries the stair out to its two ends; plumb, from the lower floor of today up to its underside. If the floor is not level, carry the height of the landing place over with the level.',
  'measure.picture.overhead':
    'One tape lies level from the trimmer out to the nearer end of a beam over the stair; another stands plumb on the lower floor, up to the height of its underside.',
  'overhead.near': 'Overhead {number}: near end, from the trimmer',
  'overhead.far': 'Overhead {number}: far end, from the trimmer',
  'overhead.hint.near': 'level, out to the end towards the trimmer',
  'toes.lead':
    'treads stay level; the floor’s fall goes into the feet and into riser 1. Trace all others from string {master}, then cut each toe to its own height',
  'toes.stringer': 'string, from the left as one climbs',

  'findings.help':
    'Stop and ask someone who can reckon it: the trimmer covers less than half of the plumb cut, the throat or the span is past its limit, no wall braces the stair, a member is cracked, or a post is only screwed to a tread.',
  'findings.authority':
    'What binds is what building control goes by where you build, in its edition and with its own changes; nothing on this page stands above it. Notice and inspections are usual: ask before cutting.',
  'where.stringer.stockDepth': 'the string',
  'where.headerContact': 'the trimmer',
  'finding.headroom.min': 'Headroom, plumb from the pitch line',
  'finding.handrail.height.min': 'Handrail above the pitch line, the least',
  'finding.handrail.height.max': 'Handrail above the pitch line, the most',
  'finding.guard.requiredAboveDrop': 'Guarding is asked for above this drop',
  'finding.guard.height.min': 'Guarding on the level',
  'finding.guard.height.stair.min': 'Guarding on the stair, above the pitch line',
  'finding.guard.height.stairHandrail.max': 'Guarding that is the handrail too, the most',
  'finding.guard.opening.triangle.maxSphere': 'Triangle under the lower rail of a balustrade',
  'finding.load.guard': 'Push on guarding',
  'finding.load.infill': 'Push on what fills a balustrade',

  'heel.firstOf': 'first cut of string {stringer} from the left, the tallest toe, as marked',
  'check.toeOf': 'toe height, string {stringer} from the left',
  'check.diagonalOf': 'toe to top, straight across, string {stringer}',
  'walk.what.toe-of': 'Toe of string {step} from the left',
  'walk.what.check-toe-of': 'Check: toe of string {step} from the left',

  'cut.lead': 'Cut one string first and stand it up. The others are traced from it, never from a copy.',
  'cut.by.between-skirts': 'between the wall strings',
  'cut.by.outside-stringers': 'over the outer strings',
  'cut.piece.stringer': 'String',
  'cut.piece.spacer': 'Packer',
  'cut.piece.skirt': 'Wall string',
  'cut.skirt':
    'Wall strings are taken {margin} above the pitch line and meet a skirting board {base} high: common practice, change it on the board if yours differs.',
  'cut.caution.knots':
    'Turn a board down that has a large knot or a split where a throat or the trimmer notch will be.',
  'cut.caution.trace':
    'Trace every string from the first one, tips to the edge. A copy of a copy grows by a pencil line each time.',

  'set.lead': 'One level line on the trimmer, three marks on the floor. Each says what the tape is hooked on.',
  'set.across.spacer': 'Packer face {number}',
  'set.across.stringer-centre': 'String {number}, centre',
  'set.laser.stringer': 'string',
  'set.order.2': 'Strike the level line on the trimmer at the mark, from one side right across.',
  'set.order.3': 'Fix the kicker at the toe mark and the packers to the walls.',
  'set.order.4': 'Fix the hanger board or the hangers; hang the first string and check the top cut with a level.',
  'set.order.6': 'Risers from the bottom up, then treads, glued and screwed at every string.',
  'set.caution.loose':
    'Nobody works from a string that is loose at either end, nor from treads that are not screwed at every string.',
  'set.fasteners.1':
    'Hanger board to trimmer, string to hanger: as the maker of the fixings or an accepted table says.',
  'set.fasteners.2':
    'Treads: two or three screws at each string, with glue; risers screwed into the back of the tread.',
  'stairs.summary': '{risers, plural, one {# riser} other {# risers}} of {rise}, going {run}',

  'print.file.dxf.what': 'elevation, string and templates, units declared',
  'strip.leadAt': 'at string {stringer}, the tallest toe; the spread is over all strings',
  'paper.heelOf': 'Foot, string {stringer} of {count} from left',
  'paper.stringerOf': 'Whole string {stringer} of {count} from left',
  'sheets.heel.tallest': 'String {stringer} from the left, where the toe is tallest. Each of the others has its own.',
  'sheets.asCutOf':
    'Risers that these marks will give at string {stringer}, the tallest toe, first to last. Spread over all strings {spread}.',
  'caution.7': 'Turn a board down that has a large knot, a split or wane at a corner, a throat or the trimmer notch.',

  'because.risers.fewest.onSlope':
    'The fewest risers that reach. Each one more also puts the foot a going farther out, where the floor lies lower, so each gains only what that leaves of the greatest rise.',
  'because.floorAtToe': 'What the string stands on, higher by what the floor rises behind the face of riser 1.',
  'because.floorAtToe.across':
    'What the string stands on, higher by what the floor rises behind the face of riser 1, and lower by what it falls from the middle of the stair to this string.',
  'because.toe':
    'A riser less the tread that lies on it and less what this string stands on, which the slope of the floor makes higher or lower.',
  'because.asCut.first.across':
    'The toe height as it is marked, with the tread on it, over the floor in front of this string.',
  'because.asCut.rest.across':
    'What the first riser and the ticks leave of the total rise, as it is in front of this string.',
  'because.headroom.overFlight': 'The ceiling’s height less that of the pitch line under the opening’s low edge.',

  'carry.coming': 'Getting the timber data',
  'carry.failed': 'The timber data could not be fetched, so nothing is screened.',
};

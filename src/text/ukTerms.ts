/** UK trade terms where they differ: going for run, string for stringer, plasterboard for wallboard. */
import type { problemsEn } from './problems.en';
import type { screenEn } from './screen.en';

export const ukTerms: Partial<Record<keyof typeof problemsEn | keyof typeof screenEn, string>> = {
  'problem.run.noLimit': 'the going is left to the program, but the chosen rules set no least going; give one',
  'problem.run.notPositive': 'the going must be more than nothing',
  'problem.nosing.tooDeep': 'the nosing must be less than half of the going, that is less than {limitMm}',
  'problem.riserBoard.tooThick': 'the riser board may be at most a quarter of the going, that is {limitMm}',
  'problem.topTread.onlyLevel':
    'only a string that is level with the floor has a top tread of its own; leave this out, or choose that top',
  'problem.topTread.outside': 'the top tread must be more than nothing and at most the going, {limitMm}',
  'problem.hanger.notWithHeader':
    'with the trimmer right behind the last riser there is no hanger board; leave this out, write 0, or choose a top that has one',
  'problem.throat.none':
    'the notches are {notchMm} deep and leave no wood below them; use a deeper board, or a lower rise or going',
  'problem.seat.none':
    'the board ends above the floor, so the string has nothing to stand on; use a deeper board or a smaller drop',
  'problem.heel.behindEnd':
    'the heel would end {heelMm} from riser 1, behind the top end of the string at {endMm}; a flight this short needs a shallower board',
  'note.noHeaderDepth': 'no bearing on the trimmer was computed: survey.headerDepth is not given',
  'note.widthTooNarrow':
    'no width stack was computed: plasterboard, wall strings, packers and carriages leave no width between these walls',

  'part.stringer': 'String',
  'part.short.stringer': 'String',
  'hint.survey.lowerLaid': 'decides what the string stands on',
  'choice.survey.lowerLaid.after-stairs': 'After the stairs: string on today’s floor',
  'choice.survey.lowerLaid.before-stairs': 'Before the stairs: string on the finished floor',
  'field.survey.upperSubfloor': 'Upper floor deck',
  'hint.survey.upperSubfloor': 'thickness on top of the trimmer',
  'hint.survey.openingFraming': 'trimmer face to trimmer face, bare timber',
  'field.survey.headerDepth': 'Trimmer depth',
  'hint.survey.headerDepth': 'the trimmer that carries the stair',
  'hint.survey.headerLining': 'plasterboard or lining on that trimmer',
  'hint.survey.widthFraming': 'wall to wall, before plasterboard',
  'field.survey.wallboard': 'Plasterboard',
  'field.survey.skirt': 'Wall string',
  'field.survey.spacer': 'Packer',
  'hint.survey.spacer': 'wall to outer string, each side',
  'field.steps.run': 'Going',
  'field.stringer.topTreadRun': 'Top tread, riser to trimmer',
  'hint.stringer.hanger': 'between string and trimmer',
  'hint.stringer.top': 'how the string meets the floor above',
  'field.stringer.count': 'Strings',
  'choice.stringer.top.header-behind-riser': 'Bears on the trimmer; a riser board closes the top',
  'left.survey.headerDepth': 'left out: how it bears on the trimmer is not worked out',
  'hint.rules.local': 'what the building control body asks in place of a rule',

  'drawing.totalRun': 'total going, riser to riser',
  'drawing.headerToRiser': 'riser 1 face to the trimmer',
  'drawing.belowSubfloor': 'below the deck today',
  'drawing.headerContact': 'bears on the trimmer',
  'drawing.heel': 'The foot of the string, enlarged',
  'drawing.heel.alt': 'The foot of the string on the floor: first cut {cut}, unit rise {rise}.',
  'drawing.topEnd.alt':
    'The string at the trimmer: its last level cut {mark} below the floor deck as it is today, plumb cut {plumb}.',
  'drawing.step.alt': 'One notch on the board: rise {rise}, going {run}, notch depth {notch}.',
  'drawing.board': 'The string on its board',
  'drawing.elevation.alt':
    'Side elevation: {risers, plural, one {# riser} other {# risers}} of {rise}, going {run}, pitch {pitch}°, total rise {total}. The figures stand in the tables below.',
  'drawing.board.alt':
    'String laid out on a board {depth} deep: {tips, plural, one {# tip} other {# tips}} along the edge, first at {first}, last at {last} from the board’s end. The marks table lists them all.',

  'rise.title': 'Rise and going',
  'rise.run': 'going',
  'rise.totalRun': 'total going',
  'rise.twoRise': 'two rises and a going',
  'heel.title': 'Foot of the string',
  'top.mark': 'mark on the trimmer, below the floor deck as it is today',
  'top.contact': 'bears on the trimmer',
  'top.noContact': 'gap between string and trimmer',
  'top.depthNeeded': 'trimmer depth for the whole cut',
  'floor.title': 'Out from the trimmer, on the floor',
  'floor.toe': 'toe of the string',
  'board.length': 'string, end to end',
  'square.blade': 'going, on the blade',
  'pole.title': 'Storey rod',
  'pole.stringer': 'string, from what it stands on',
  'rips.lead': 'Rounded down to the saw, so that the string carries the tread and never the riser.',
  'width.betweenSkirts': 'between wall strings',
  'width.stringers': 'strings',
  'width.overhang': 'tread past the outer string',
  'results.caution':
    'Sizes are drawn and checked here, nothing else. Strength is not: spans, loads, fixings and trimmers need a table, a maker’s data or an engineer. Where the local code or a licensed practitioner says otherwise, they win.',

  'finding.tread.min': 'Going, nosing to nosing',
  'finding.tread.max': 'Going, the most',
  'finding.twoRPlusG.min': 'Two rises and a going, the least',
  'finding.twoRPlusG.max': 'Two rises and a going, the most',
  'finding.headerContact': 'Plumb cut that bears on the trimmer: half of it, at least',
  'finding.guard.opening.maxSphere': 'Gaps in a balustrade on the level',
  'finding.guard.opening.stair.maxSphere': 'Gaps in a balustrade on the stair',
  'finding.stringer.effectiveDepth.min': 'Wood left in a cut string: these rules give no figure',
  'finding.taste.twoRPlusG': 'Two rises and a going: 24 to 25',
  'finding.taste.rPlusG': 'A rise and a going: 17 to 19',
  'finding.taste.rTimesG': 'A rise times a going: 70 to 75',
};

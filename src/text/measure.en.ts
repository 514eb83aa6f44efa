/** Measuring, one thing at a time: what, how, where the tape goes, and what is not worked out without it. */
export const measureEn = {
  'measure.label': 'What to measure',
  'measure.missing':
    '{count, plural, =0 {Everything has been measured or answered} one {One thing is still missing} other {# things are still missing}}',
  'measure.first': 'Begin with the rise. One reading is enough to draw a stair; the rest can follow, or stay unknown.',
  'measure.state.missing': 'missing',
  'measure.state.unknown': 'not known yet',
  'measure.before': 'Back: {thing}',
  'measure.after': 'Next: {thing}',

  'measure.rise': 'The rise',
  'measure.finishes': 'Floors and treads to come',
  'measure.landing': 'Where it lands',
  'measure.opening': 'The opening',
  'measure.header': 'The header',
  'measure.depth': 'Depth of the upper floor',
  'measure.overhead': 'What hangs overhead',
  'measure.overhead.count':
    '{count, plural, =0 {nothing but the floor} one {# beam, duct or ceiling} other {# beams, ducts or ceilings}}',
  'measure.widths': 'The widths',

  'measure.how.rise':
    'From the lower surface up to the upper one, as both are today. Carry the upper surface out level with a straightedge, and read the tape plumb where the stair will land: on the left, in the centre, on the right.',
  'measure.how.finishes':
    'What is still to be laid on each floor and on the treads. What nobody has decided is “not known yet”, which is no zero.',
  'measure.how.landing':
    'If the rise was read somewhere else, lay a long level from there to where the stair lands, and measure what the floor falls. On a floor that is not level, read what it falls under a long level, along the stair and across it.',
  'measure.how.opening': 'Along the stair, bare framing to bare framing. Finishes and linings come off by themselves.',
  'measure.how.header': 'The depth of the wood that the stair hangs on, and the subfloor that lies on top of it.',
  'measure.how.depth':
    'Everything that a head passes under: finished floor, subfloor, joists, ceiling, down to the finished ceiling.',
  'measure.how.overhead':
    'Every beam, duct or sloping ceiling over the flight. Level, from the face of the header that carries the stair out to its two ends; plumb, from the lower floor of today up to its underside. If the floor is not level, carry the height of the landing place over with the level.',
  'measure.how.widths': 'At the bottom, halfway and at the top, framing to framing. Give the least.',

  'measure.without.rise': 'nothing can be laid out',
  'measure.without.finishes': 'the first and the last riser stay open',
  'measure.without.landing': 'taken as level with where the tape stood',
  'measure.without.opening': 'no headroom, only the opening needed',
  'measure.without.header': 'how it bears on the header is not worked out',
  'measure.without.depth': 'no headroom is worked out',
  'measure.without.overhead': 'nothing but the floor',
  'measure.without.widths': 'nothing across the stair is worked out',

  'measure.picture.rise':
    'The tape stands plumb where the stair lands, from the lower floor up to a level line from the upper floor.',
  'measure.picture.finishes': 'Three layers to come: on the lower floor, on the treads, on the upper floor.',
  'measure.picture.landing':
    'A level line from where the tape stood; the measure goes down from it to the floor where the stair lands.',
  'measure.picture.opening': 'The tape lies along the opening, from the face of one header to the face of the other.',
  'measure.picture.header': 'The tape runs down the header from under the subfloor; the subfloor is measured above it.',
  'measure.picture.depth': 'The tape runs from the finished upper floor down to the finished ceiling.',
  'measure.picture.overhead':
    'One tape lies level from the header out to the nearer end of a beam over the stair; another stands plumb on the lower floor, up to the height of its underside.',
  'measure.word.near': 'near end',
  'measure.word.height': 'height',
  'measure.picture.widths':
    'Seen from the front: the tape lies from wall framing to wall framing, over wallboard, skirts and stringers.',
  'measure.picture.fall':
    'On the left, from the side: a level lies along the stair with its inner end on the floor, and the gap is read under its outer end. On the right, from the foot of the stair: a level lies across, its left end on the floor, and the gap is read under its right end.',
  'measure.word.along': 'along, from the side',
  'measure.word.across': 'across, from the foot',
  'measure.fall.lower': 'Where the stair lands the floor lies {by} lower than where the tape stood.',
  'measure.fall.higher': 'Where the stair lands the floor lies {by} higher than where the tape stood.',
  'measure.fall.again': 'Mark {mark} out from the header and measure the rise there again: it should read {rise}.',
  'measure.fall.noWidth':
    'Without a framed width nobody can say where each stringer stands, so there is one toe height, on the centre line. Measure the width.',
  'measure.fall.edges':
    'Riser 1 is {left} at the left edge and {right} at the right, as one climbs; all others are {others}. From the tallest to the shortest: {spread}.',
  'measure.fall.keeps': 'Nearest to its limit: {rule}, {edge}: {actual} against {limit}.',
  'measure.fall.breaks':
    'Over its limit: {rule}, {edge}: {actual} against {limit}. Level the landing, or lay a step of its own on it.',
  'measure.fall.edge.left': 'at the left edge',
  'measure.fall.edge.right': 'at the right edge',
  'measure.fall.edge.both': 'from one edge to the other',
  'toes.title': 'Toe heights',
  'toes.lead':
    'treads stay level; the floor’s fall goes into the feet and into riser 1. Trace all others from stringer {master}, then cut each toe to its own height',
  'toes.stringer': 'stringer, from the left as one climbs',
  'toes.fromLeft': 'centre, from the framing on the left',
  'toes.toe': 'toe height',
  'toes.diagonal': 'toe to top',

  'overhead.none': 'None. Add each one that a head passes under, beside the floor above.',
  'overhead.title': 'Overhead {number}',
  'overhead.add': 'Add something overhead',
  'overhead.remove': 'Take out overhead {number}',
  'overhead.removeShort': 'Take out',
  'overhead.name': 'Overhead {number}: what it is',
  'overhead.near': 'Overhead {number}: near end, from the header',
  'overhead.far': 'Overhead {number}: far end, from the header',
  'overhead.height': 'Overhead {number}: height of its underside',
  'overhead.heightFar': 'Overhead {number}: height at the far end',
  'overhead.clearance': 'Overhead {number}: clearance wanted',
  'overhead.hint.name': 'a beam, a duct, the roof',
  'overhead.hint.near': 'level, out to the end towards the header',
  'overhead.hint.far': 'level, out to the end away from it',
  'overhead.hint.height': 'over the lower floor of today, at the near end',
  'overhead.hint.heightFar': 'only where its underside slopes',
  'overhead.hint.clearance': 'left out: the headroom of the rules',

  'window.title': 'How thick they may come out',
  'window.lead': 'with the stair cut as it is laid out now, so that every riser stays within the rules:',
  'window.lower': 'lower floor',
  'window.upper': 'upper floor',
  'window.tread': 'tread, all of it',
  'window.between': 'from {least} to {most}',
  'window.least': '{least} or more',
  'window.most': '{most} or less',
  'window.only': 'just {least}',
  'window.any': 'any: these rules set no figure',
  'window.none': 'no thickness does it: the risers are out of the rules as they are',
  'window.driver':
    'Ask about the {surface} first: of what is not known yet it moves the first riser most, by up to {by} over the usual thicknesses.',
  'window.driver.last':
    'Ask about the {surface} first: it leaves the first riser alone, and moves the last one by up to {by} over the usual thicknesses.',
  'window.onSheet': 'Within the rules: {surface}',
  'window.askFirst': 'Ask about first',

  'measure.guess': 'A stair in dashes: nothing of it has been measured yet.',
  'measure.word.lower': 'lower floor',
  'measure.word.upper': 'upper floor',
  'measure.word.tread': 'tread',
  'measure.word.level': 'level',
  'measure.word.stood': 'tape stood',
  'measure.word.lands': 'lands',
  'measure.word.subfloor': 'subfloor',
  'measure.word.header': 'header',
  'measure.word.ceiling': 'ceiling',
  'measure.word.stringer': 'stringer',

  'measure.reading.left': 'Reading on the left',
  'measure.reading.centre': 'Reading in the centre',
  'measure.reading.right': 'Reading on the right',
  'measure.reading.hint': 'up to the level line',
  'measure.spot.left': 'left',
  'measure.spot.centre': 'centre',
  'measure.spot.right': 'right',
  'measure.spread': 'Highest less lowest: {spread}.',
  'measure.apart.short': 'The readings do not agree.',
  'measure.apart':
    'More than {limit} apart. Read them again. If they stay apart, the floors are out of level: settle on one side, set everything out from it, and scribe or pack the other.',
  'measure.take.only': 'Take {value}',
  'measure.take.middle': 'Take the middle one: {value}',
  'measure.take.one': 'Take the {spot}: {value}',
  'measure.taken': '{value} is the rise in use.',

  'measure.effect.lower': 'If the lower floor to come is',
  'measure.effect.upper': 'If the upper floor to come is',
  'measure.effect.tread': 'If what goes on the treads is',
  'measure.effect.lead': 'with the stair cut as it is laid out now:',
  'measure.effect.thickness': 'thick',
  'measure.effect.nothing': 'nothing',
  'measure.effect.first': 'first riser',
  'measure.effect.last': 'last riser',
  'measure.effect.answer': 'risers',

  'measure.odd': '{field}: {value} is unusual. Read the tape again, and look at the unit. It is used as it stands.',

  'measure.back.title': 'Read back',
  'measure.back.lead': 'Call these out to whoever holds the tape, and have each one repeated.',
  'measure.back.what': 'What',
  'measure.back.inches': 'Feet and inches',
  'measure.back.mm': 'mm',
  'measure.back.notKnown': 'not known yet',
  'measure.back.none': 'Nothing has been measured yet.',

  'measure.caution.title': 'Before you lean over the edge',
  'measure.caution.1':
    'An open stairwell is a fall. Guard it all round, or cover it with a board that cannot slide and says what is under it.',
  'measure.caution.2':
    'Measure with two: one holds the end of the tape, one reads. Stand on the ladder, not on the header.',
  'measure.caution.3':
    'Ask the building office which code it goes by, in which edition, and what it has changed. Its word comes before the rules chosen here.',
} as const;

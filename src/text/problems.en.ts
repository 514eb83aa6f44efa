/**
 * What is said about bad input: what is wrong, and what would be right. The place is put in
 * front of it (`stairs[0].survey.rise: `) or it stands at the field. Values ending in Mm arrive
 * as written lengths.
 */
export const problemsEn = {
  'cli.usage': 'usage: npm run --silent layout -- path/to/job.json (one job file)',
  'cli.unreadable': '"{path}" cannot be read; give the path of a job file',

  'problem.file.tooLarge': 'the file is larger than {most} kB; a job file is a few kilobytes of JSON text',
  'problem.file.notText': 'this is not a text file; a job file is JSON in UTF-8',
  'problem.file.tooDeep': 'the file is nested more than {most} levels deep; a job file needs 5',
  'problem.file.notJson': 'this is not JSON; a job file is a JSON object that begins with "format": "pitchboard.job"',
  'problem.file.notObject':
    'this is JSON but no object; a job file is one object with "format", "version" and "stairs"',
  'problem.file.prototypeKey': 'the key "__proto__" is not accepted; take it out',
  'problem.file.format': 'this is another kind of file; "format" must be "{format}"',
  'problem.file.tooNew':
    'version {version} is too new for this program, which reads version {most}; update the program',
  'problem.file.version': '"version" must be the number {most}',
  'problem.stairs.none': 'the list is empty; a job has at least one stair',
  'problem.stairs.idTwice': 'the id "{id}" is used twice; every stair needs an id of its own',
  'problem.key.unknown': 'unknown key "{key}"; the nearest known one is "{nearest}"',
  'problem.key.twice':
    'the key "{key}" is written twice, and only one of its values could count; take out the one that does not hold',
  'problem.key.missing': 'this key is required and is missing',
  'problem.value.object': 'this must be an object in braces',
  'problem.value.list': 'this must be a list in square brackets',
  'problem.value.text': 'this must be text in quotes',
  'problem.value.tooLong': 'this text is longer than 1000 characters; shorten it',
  'problem.value.choice': 'this must be one of: {allowed}',
  'problem.value.countForm': 'this must be a whole number, or "auto"',
  'problem.value.finishForm':
    'this must be a length such as "5/8 in", or an object with "length" and "known" (measured, specified or assumed), or "unknown"',
  'problem.value.count': '{found} is not accepted; write a whole number from {least} to {most}, or "auto"',
  'problem.value.notPositive': '"{found}" is nothing; this length must be more than zero',
  'problem.markStep.tooCoarse':
    'no board is marked this coarsely; write {mostMm} or less, such as "1/16 in" or "0.5 mm"',
  'problem.wish.choice': '"{found}" is not known here; choose from {known}',
  'problem.wish.tooMany': '{found} criteria are more than make a difference; name {most} at most',
  'problem.tapeDoubt.tooMuch':
    'a tape that may be out by more than {mostMm} settles nothing; write what yours may be out, such as "1/16 in" or "1 mm"',
  'problem.local.value':
    '"{found}" cannot be read as this limit; write {kind, select, length {a length with its unit, such as "8 1/4 in" or "210 mm"} angle {an angle up to plumb, such as "42 deg"} slope {a slope, such as "1:48"} count {a whole number, such as "16"} yesNo {yes or no} load {a load in the unit of the rule, such as "40 psf"} other {it as the rule has it: a length with its unit such as "8 1/4 in", an angle such as "42 deg", a slope such as "1:48", yes or no, or a plain number where it counts something}}',
  'problem.local.negative':
    '"{found}" is less than nothing, which limits no stair; write {kind, select, length {a length with its unit, such as "8 1/4 in" or "210 mm"} angle {an angle, such as "42 deg"} other {a figure of nothing or more}}',
  'problem.local.crossed':
    '{least} asks for at least {leastValue} and {most} for at most {mostValue}: no stair can have both; change one of them',

  'problem.length.empty': 'there is no length here; write one such as "107 5/8 in" or "2733.5 mm"',
  'problem.length.noText': 'a length is text with its unit, in quotes, such as "107 5/8 in" or "2733.5 mm"',
  'problem.length.tooLong': 'this is too long to be a length; write one such as "107 5/8 in"',
  'problem.length.noUnit':
    '"{found}" has no unit; write it with one, such as {found} in or {found} mm, or in feet and inches',
  'problem.length.decimalComma': '"{found}" has a decimal comma; write a point',
  'problem.length.feetDecimal':
    '"{found}" has a point in the feet, which can be read two ways; write feet and inches such as 8\'\' 10", or inches alone',
  'problem.length.feetOrDecimal':
    '"{found}" can be read two ways: as feet and inches, or as inches with a decimal; write 8\'\' 10", or 8.1 in',
  'problem.length.zeroDenominator': '"{found}" divides by zero; write a fraction such as 5/8',
  'problem.length.exponent': '"{found}" has an exponent; write the number in full',
  'problem.length.improperFraction':
    '"{found}" has a fraction of one or more after its whole number; write it as the tape reads',
  'problem.length.inchesOverFoot': '"{found}" has 12 inches or more beside its feet; write it as the tape reads',
  'problem.length.negative': '"{found}" is less than nothing; this length cannot be negative',
  'problem.length.tooFar': '"{found}" is longer than 10 km; check the unit',
  'problem.length.unread': '"{found}" is no length; write one such as "107 5/8 in", 8\'\' 11 5/8" or "2733.5 mm"',

  'problem.load.empty': 'there is no load here; write one such as "40 psf", "1.9 kPa", "300 lbf" or "1.3 kN"',
  'problem.load.noText': 'a load is text with its unit, in quotes, such as "40 psf" or "1.9 kPa"',
  'problem.load.noUnit':
    '"{found}" has no unit; write it with one: psf or kPa where it is spread, lbf or kN on one spot',
  'problem.load.unread':
    '"{found}" is no such load; write a number with psf or kPa where it is spread, with lbf or kN on one spot',
  'problem.load.nothing': '"{found}" is nothing; this load must be more than zero',
  'problem.load.tooMuch': '"{found}" is more than any stair is built for; check the unit',

  'problem.rise.notPositive':
    'the total rise comes to {totalRiseMm} once the finishes are counted; it must be more than nothing: check the reading and the finishes',
  'problem.obstacle.order':
    'the far end must not be nearer to the header than the near end, {nearMm}; the near end is the one towards the header',
  'problem.foot.twice':
    'how much lower the floor is where the stair lands is given twice: as a reading here, and by the slope of the floor from where the tape stood; leave one of them out',
  'problem.slope.asStair':
    'the floor falls away as steeply as the stair climbs, so the two would never meet; check what it falls and over what length',
  'problem.slope.pastSquare':
    'the floor falls toward the header so steeply that the stringer could not stand on it; check what it falls and over what length',
  'problem.slope.overTread':
    'the floor would come up to the first tread at one edge of the stair, {riseMm} over its middle; check what it falls and over what length',
  'problem.toe.noneOnSlope':
    '{stringer, plural, =0 {nothing is left of the first cut} other {nothing is left of the first cut of stringer #, counted from the left}}: the floor there lies {shortMm} higher than the first cut; check what the floor falls and over what length',
  'problem.risers.noLimit':
    'the number of risers is left to the program, but the chosen rules set no greatest riser; give a number',
  'problem.risers.tooMany':
    'this rise would need {needed} risers; a flight here has at most {most}: check the unit of the rise',
  'problem.run.noLimit': 'the run is left to the program, but the chosen rules set no least run; give one',
  'problem.run.notPositive': 'the run must be more than nothing',
  'problem.nosing.tooDeep': 'the nosing must be less than half of the run, that is less than {limitMm}',
  'problem.riserBoard.tooThick': 'the riser board may be at most a quarter of the run, that is {limitMm}',
  'problem.topTread.onlyLevel':
    'only a stringer that is level with the floor has a top tread of its own; leave this out, or choose that top',
  'problem.topTread.outside': 'the top tread must be more than nothing and at most the run, {limitMm}',
  'problem.hanger.notWithHeader':
    'with the header right behind the last riser there is no hanger board; leave this out, write 0, or choose a top that has one',
  'problem.tipInset.pastBoard': 'the tips would lie off the board; hold them back by less than its depth, {limitMm}',
  'problem.toe.none':
    'nothing is left of the first cut: tread and floor take {dropMm} off the first riser; check the tread, the floor to come and the rise',
  'problem.throat.none':
    'the notches are {notchMm} deep and leave no wood below them; use a deeper board, or a lower rise or run',
  'problem.seat.none':
    'the board ends above the floor, so the stringer has nothing to stand on; use a deeper board or a smaller drop',
  'problem.plumbCut.none':
    'nothing is left of the plumb cut at the top: it is {shortMm} short; use a deeper board, or a lower rise, or carry a tread level with the floor',
  'problem.heel.behindEnd':
    'the heel would end {heelMm} from riser 1, behind the top end of the stringer at {endMm}; a flight this short needs a shallower board',
  'problem.kicker.tooHigh': 'the kicker must be lower than the first cut, {limitMm}',
  'problem.kicker.tooWide': 'the kicker must be narrower than the seat, {limitMm}',
  'problem.check.failed':
    'the layout does not agree with itself ({what}, step {step}: expected {expectedMm}, found {foundMm}), so it is not shown; this is a fault of the program: please report the job file',

  'note.noFloorDepth': 'no headroom and no opening needed were computed: survey.floorDepth is not given',
  'note.noOpening': 'no headroom was computed: survey.openingFraming is not given',
  'note.noHeadroomLimit': 'no opening needed was computed: the chosen rules set no headroom',
  'note.ceilingTooLow': 'no opening is long enough: the ceiling itself is lower than the headroom wanted',
  'note.noHeaderDepth': 'no header contact was computed: survey.headerDepth is not given',
  'note.noWidth': 'no width stack was computed: survey.widthFraming is not given',
  'note.slopeNoWidth':
    'the floor falls across the stair, but no toe height was computed for each stringer, only that on the centre line: survey.widthFraming is not given, or leaves no room',
  'note.obstacleOutside':
    'nothing of overhead {number} is over the flight: it lies in front of the stair’s foot, and its clearance is taken from the floor there',
  'note.widthTooNarrow':
    'no width stack was computed: wallboard, skirts, spacers and stringers leave no width between these walls',
  'note.oddRise': 'a total rise of {riseMm} is unusual for one flight: check the reading and its unit',
  'note.oddOpening': 'an opening of {openingMm} is unusual: check the reading and its unit',
  'note.packMissing': 'nothing was checked against rules: this program has no rule pack "{pack}"',
  'note.packMissingLocal': 'only the local limits were checked: this program has no rule pack "{pack}"',
  'note.localUnknown':
    'the local limit on "{field}" has no effect: this program knows no rule of that name; see docs/rule-packs.md',
  'note.localCrossed':
    '{least} asks for at least {leastValue} and {most} for at most {mostValue}, one by these rules and one by the local limits: no stair can meet both',
  'note.profileMissing': 'the rule pack has no such profile; its usual one was used, if it has any',
  'note.softCovering': 'soft covering is noted and not counted: these rules measure to the hard surface',
} as const;

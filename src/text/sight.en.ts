/** What is said round the drawings: how to look closer, and what a number on them leads to. */
export const sightEn = {
  'drawing.tread': 'tread',
  'drawing.alreadyDropped': 'already dropped',
  'drawing.raised': 'more than a riser',
  'drawing.wholeRiser': 'to drop: nothing',
  'drawing.headerMark': 'header mark, below today’s subfloor',
  'drawing.firstCutMarked': 'first cut, as marked',
  'drawing.clearance': 'clearance',
  'drawing.floorHigher': 'floor higher here',
  'drawing.floorLower': 'floor lower here',
  'drawing.firstRiserHere': 'riser 1 at the tallest toe',
  'drawing.totalRiseSoFar': 'total rise, so far known',

  'sight.label': '{title}: drag to move, wheel or two fingers to come closer',
  'sight.keys': 'Plus and minus come closer and step back, the arrows move, 0 shows the whole.',
  'sight.closer': 'Closer: {title}',
  'sight.back': 'Step back: {title}',
  'sight.whole': 'Fit',
  'sight.wholeLong': 'Fit: show all of it: {title}',
  'sight.toField': '{name}, {figure}: change it',
  'sight.inDetail': '{words} ({title})',
  'sight.toWhy': '{name}, {figure}: why',
} as const;

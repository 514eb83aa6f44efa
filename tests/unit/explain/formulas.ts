/**
 * Every sum that an explanation can name, written a second time from its name alone: what the terms
 * come to. It knows nothing of the layout; what it is handed is what a person would be shown.
 */
export type Values = Readonly<Record<string, number>>;

const roundTo = (value: number, step: number) => Math.floor(value / step + 0.5 + 1e-9) * step;
/** How far a tick moves when it is put on the tape's grid. */
const nudge = (value: number, step: number) => roundTo(value, step) - value;
const value = (v: Values, symbol: string): number => {
  const found = v[symbol];
  if (found === undefined) throw new Error(`no ${symbol} among ${Object.keys(v).join(' ')}`);
  return found;
};
const only = (v: Values): number => {
  const [first, ...rest] = Object.values(v);
  if (first === undefined || rest.length > 0) throw new Error(`one term, not ${Object.keys(v).join(' ')}`);
  return first;
};

/** `sum('a - b')`: a sum of symbols, each with its sign. */
const sum = (text: string) => (v: Values) =>
  text
    .replace(/- /g, '-')
    .split(/ \+ | (?=-)/)
    .reduce((total, part) => total + (part.startsWith('-') ? -value(v, part.slice(1)) : value(v, part)), 0);

/** How much lower the floor lies beside the middle of the stair, at the place c from the left. */
const aside = (v: Values) => (value(v, 'fc') / value(v, 'oc')) * (value(v, 'c') - value(v, 'Wf') / 2);
/** How much lower it lies under the back of a riser board than under its face, if it does. */
const back = (v: Values) => Math.max(0, (-value(v, 'fa') / value(v, 'oa')) * value(v, 'tr'));

export const FORMULAS: Readonly<Record<string, (v: Values) => number>> = {
  same: only,
  given: only,
  totalRise: sum('M + foot + fU - fL'),
  'totalRise.onSlope': (v) =>
    sum('M + foot + fU - fL')(v) + (value(v, 'fa') / value(v, 'oa')) * (value(v, 'X') - value(v, 'r')),
  floorAtToe: (v) => value(v, 'zs') + (value(v, 'fa') / value(v, 'oa')) * value(v, 'tr'),
  'floorAtToe.across': (v) => value(v, 'zs') + (value(v, 'fa') / value(v, 'oa')) * value(v, 'tr') - aside(v),
  toe: (v) =>
    value(v, 'R') - value(v, 't') - value(v, 'zs') - (value(v, 'fa') / value(v, 'oa')) * value(v, 'tr') + aside(v),
  'firstCut.onSlope': sum('R - t - floor'),
  'drop.onSlope': sum('t + floor'),
  'seat.onSlope': (v) => {
    const [slope, pitch] = [value(v, 'fa') / value(v, 'oa'), Math.tan(value(v, 'theta'))];
    const level = (value(v, 'd') - value(v, 'e')) / Math.cos(value(v, 'theta')) - value(v, 'h1');
    return (level / (pitch - slope)) * Math.sqrt(1 + slope ** 2);
  },
  'riserRip.onSlope': (v) => value(v, 'R') - value(v, 't') - value(v, 'zs') + back(v),
  'riserRip.onSlope.across': (v) =>
    value(v, 'R') -
    value(v, 't') -
    value(v, 'zs') +
    back(v) +
    (Math.abs(value(v, 'fc')) / value(v, 'oc')) * (value(v, 'Wsk') / 2),
  'asCut.first.across': (v) => roundTo(value(v, 'h1'), value(v, 'step')) + value(v, 't') + value(v, 'zs') + aside(v),
  'asCut.rest.across': (v) => (FORMULAS['asCut.rest']?.(v) as number) + aside(v),
  'risers.fewest': (v) => Math.max(2, Math.ceil(value(v, 'H') / value(v, 'Rmax') - 1e-9)),
  'risers.fewest.onSlope': (v) => {
    const perRiser = (value(v, 'fa') / value(v, 'oa')) * value(v, 'G');
    return Math.max(2, Math.ceil((value(v, 'H') - value(v, 'N') * perRiser) / (value(v, 'Rmax') - perRiser) - 1e-9));
  },
  'treads.hung': (v) => value(v, 'N') - 1,
  'treads.level': (v) => value(v, 'N'),
  unitRise: (v) => value(v, 'H') / value(v, 'N'),
  totalRun: (v) => (value(v, 'N') - 1) * value(v, 'G'),
  twoRisePlusRun: (v) => 2 * value(v, 'R') + value(v, 'G'),
  pitch: (v) => Math.atan(value(v, 'R') / value(v, 'G')),
  stepLength: (v) => Math.sqrt(value(v, 'R') ** 2 + value(v, 'G') ** 2),
  sawLevel: (v) => Math.PI / 2 - value(v, 'theta'),
  pole: (v) => (value(v, 'i') * value(v, 'H')) / value(v, 'N'),
  poleCut: sum('top - t'),
  poleToday: sum('top + fL'),
  'seatHeight.floorLater': (v) => -only(v),
  'seatHeight.floorFirst': () => 0,
  notchDepth: (v) => (value(v, 'R') * value(v, 'G')) / value(v, 'U'),
  gaugeLine: sum('e + notch'),
  throat: sum('d - e - notch'),
  'firstCut.floorLater': sum('R - t + fL'),
  'firstCut.floorFirst': sum('R - t'),
  'drop.floorLater': sum('t - fL'),
  'drop.floorFirst': sum('t'),
  seat: (v) =>
    (value(v, 'd') - value(v, 'e')) / Math.sin(value(v, 'theta')) - value(v, 'h1') / Math.tan(value(v, 'theta')),
  kickerToe: sum('h1 - kh'),
  kickerSeat: sum('s - kw'),
  endAlong: (v) => (value(v, 'T') - 1) * value(v, 'U') + value(v, 'last') * Math.cos(value(v, 'theta')),
  boardLength: (v) => value(v, 'end') + value(v, 'h1') * Math.sin(value(v, 'theta')),
  stockLength: (v) => {
    const needed = value(v, 'L') + 2 * value(v, 'trim');
    const steps = Math.ceil((needed - value(v, 'least')) / value(v, 'every') - 1e-9);
    return value(v, 'least') + Math.max(0, steps) * value(v, 'every');
  },
  firstMark: (v) => value(v, 'trim') + value(v, 'h1') * Math.sin(value(v, 'theta')),
  end: sum('s0 + end'),
  endDepth: (v) => value(v, 'e') + value(v, 'last') * Math.sin(value(v, 'theta')),
  diagonal: (v) => Math.hypot(value(v, 'E') - value(v, 'tr'), value(v, 'top') - value(v, 'zs')),
  spread: sum('tallest - shortest'),
  tip: (v) => value(v, 's0') + (value(v, 'i') - 1) * value(v, 'U'),
  corner: (v) => value(v, 'tip') + value(v, 'G') * Math.cos(value(v, 'theta')),
  'asCut.first': (v) => roundTo(value(v, 'h1'), value(v, 'step')) + value(v, 't') + value(v, 'zs'),
  'asCut.between': (v) =>
    value(v, 'R') +
    (nudge(value(v, 'tip'), value(v, 'step')) - nudge(value(v, 'tipBelow'), value(v, 'step'))) *
      Math.sin(value(v, 'theta')),
  'asCut.rest': (v) =>
    value(v, 'H') -
    value(v, 'first') -
    (value(v, 'T') - 1) * value(v, 'R') -
    (nudge(value(v, 'tipLast'), value(v, 'step')) - nudge(value(v, 'tipFirst'), value(v, 'step'))) *
      Math.sin(value(v, 'theta')),
  lastLevelCut: sum('G - tr'),
  plumbCut: (v) =>
    (value(v, 'd') - value(v, 'e')) / Math.cos(value(v, 'theta')) - Math.tan(value(v, 'theta')) * value(v, 'last'),
  headerMarkFinish: sum('R + t'),
  headerMark: sum('below - fU'),
  topHeight: sum('H - below'),
  'stringerEnd.atRiser': (v) => (value(v, 'N') - 1) * value(v, 'G'),
  'stringerEnd.behindRiser': (v) => (value(v, 'N') - 1) * value(v, 'G') + value(v, 'tr'),
  'stringerEnd.level': (v) => (value(v, 'N') - 1) * value(v, 'G') + value(v, 'tr') + value(v, 'last'),
  headerFace: sum('E + th'),
  toeMark: sum('X - tr'),
  nosingMark: sum('X + n'),
  headerContact: (v) => {
    // Depths under the header's top: where the stringer begins and ends, where the header does.
    const begins = value(v, 'mark') - value(v, 'sU');
    return Math.min(value(v, 'dh'), begins + value(v, 'P')) - Math.max(0, begins);
  },
  depthNeeded: sum('mark - sU + P'),
  'treadRip.butts': sum('G + n'),
  'treadRip.underRiser': sum('G + n + tr'),
  lastTreadRip: sum('last + tr + n'),
  'topRiserRip.onTread': sum('R - tn'),
  'topRiserRip.behindTread': sum('R - tn + t'),
  hangerRip: sum('R + t - tn + P'),
  riserOpening: sum('R - t'),
  'riserRip.floorLater': sum('R - t + fL'),
  'riserRip.floorFirst': sum('R - t'),
  'riserRip.onTread': sum('R - t'),
  openingEdge: sum('X - O + tw'),
  'headroom.overFlight': (v) =>
    value(v, 'H') -
    value(v, 'Df') -
    (value(v, 'R') + (value(v, 'R') / value(v, 'G')) * (value(v, 'xw') + value(v, 'n'))),
  'headroom.overFloor': sum('H - Df'),
  openingNeeded: (v) =>
    ((value(v, 'HR') + value(v, 'Df')) * value(v, 'G')) / value(v, 'R') +
    value(v, 'n') +
    (value(v, 'X') - (value(v, 'N') - 1) * value(v, 'G')) +
    value(v, 'tw'),
  obstacle: sum('under - stands'),
  obstacleUnder: sum('h - fL'),
  'obstacleUnder.between': (v) => {
    const place = value(v, 'X') - (value(v, 'N') - 1) * value(v, 'G') + value(v, 'n');
    const share = (value(v, 'pf') - place) / (value(v, 'pf') - value(v, 'pn'));
    return value(v, 'hf') + share * (value(v, 'hn') - value(v, 'hf')) - value(v, 'fL');
  },
  'obstacleStands.lower': () => 0,
  'obstacleStands.flight': (v) =>
    value(v, 'R') + (value(v, 'R') / value(v, 'G')) * (value(v, 'X') - value(v, 'p') + value(v, 'n')),
  widthFinished: (v) => value(v, 'Wf') - 2 * value(v, 'dw'),
  betweenSkirts: (v) => value(v, 'W') - 2 * value(v, 'sk'),
  treadLength: sum('Wsk - play'),
  treadOverhang: (v) => (value(v, 'Wsk') - (value(v, 'Wf') - 2 * value(v, 'sp'))) / 2,
  stringers: (v) =>
    Math.max(2, Math.ceil((value(v, 'Wf') - 2 * value(v, 'sp') - value(v, 'ws')) / value(v, 'Smax') - 1e-9) + 1),
  spacing: (v) => (value(v, 'Wf') - 2 * value(v, 'sp') - value(v, 'ws')) / (value(v, 'c') - 1),
  stringerCentre: (v) => value(v, 'sp') + value(v, 'ws') / 2 + (value(v, 'i') - 1) * value(v, 'spacing'),
};

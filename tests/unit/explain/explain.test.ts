import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactSheet } from '../../../src/core/check/printedSheet';
import { explain, measuresOf } from '../../../src/core/explain/explain';
import type { Explanation, Measure, Term } from '../../../src/core/explain/measures';
import type { JobText } from '../../../src/core/job/jobText';
import { setOut } from '../../../src/core/layout/setOut';
import type { StairPlan } from '../../../src/core/plan/planStair';
import { toMm } from '../../../src/core/units/exact';
import { parseLength } from '../../../src/core/units/length';
import { anyStair, planOrSkip } from '../../fixtures/anyStair';
import { answerOf, type Changes, changed, DECK, inInches, LOFT, planOf, type StairAnswer } from '../../fixtures/stairs';
import { FORMULAS } from './formulas';

function told(plan: StairPlan, measure: Measure): Explanation {
  const explanation = explain(plan, measure);
  if (explanation === null) throw new Error(`nothing is said about ${measure}`);
  return explanation;
}

const loft = (measure: Measure, changes: Changes = {}) => told(planOf(changed(LOFT, changes)), measure);

/** The terms put into the sum that is named, by hands that know the sum's name only. */
function recomputed({ formula, terms }: Explanation): number {
  const evaluate = FORMULAS[formula];
  if (evaluate === undefined) throw new Error(`no such sum: ${formula}`);
  expect(new Set(terms.map(({ symbol }) => symbol)).size, `${formula}: a symbol twice`).toBe(terms.length);
  return evaluate(Object.fromEntries(terms.map(({ symbol, value }) => [symbol, value])));
}

/** What the file itself says at a key, read anew. */
function typed(job: JobText, key: string): unknown {
  const top = job as unknown as Record<string, unknown>;
  const start: unknown = Object.hasOwn(top, key) ? top : job.stairs[0];
  const path = key.replace(/\[(\d+)\]/g, '.$1');
  return path.split('.').reduce((node, name) => (node as Record<string, unknown> | undefined)?.[name], start);
}

function inMm(text: unknown): number {
  const plain = typeof text === 'object' && text !== null ? (text as { length: string }).length : text;
  if (typeof plain === 'number') return plain;
  const reading = parseLength(plain, true);
  if (!reading.ok) throw new Error(`${String(plain)}: ${reading.fault}`);
  return toMm(reading.length);
}

/** Where a term says it came from, asked there. */
function fromOrigin(job: JobText, plan: StairPlan, { origin, value }: Term): number {
  switch (origin.from) {
    case 'measure':
      return told(plan, origin.measure).result;
    case 'job':
      return inMm(typed(job, origin.key));
    case 'default': {
      expect(typed(job, origin.key)).toBeUndefined();
      return inMm(plan.defaults.find(({ key }) => key === origin.key)?.used);
    }
    case 'unknown': {
      expect([undefined, 'unknown']).toContain(typed(job, origin.key));
      const used = plan.defaults.find(({ key }) => key === origin.key)?.used ?? '';
      return used.includes('laid out as') ? inMm(used.replace(/^.* as /, '')) : 0;
    }
    case 'rule':
      return toMm(plan.rules.limits.find(({ field }) => field === origin.field)?.exact ?? { num: -1n, den: 1n });
    case 'practice':
    case 'place':
      return value;
  }
}

test('for any stair, every number follows from its own terms, and every term from where it says', () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(anyStair, (job) => {
      const plan = planOrSkip(job);
      for (const measure of measuresOf(plan)) {
        const explanation = told(plan, measure);
        seen.add(explanation.formula);
        const again = recomputed(explanation);
        const slack = explanation.unit === 'mm' ? 1e-6 : 1e-12;
        if (!(Math.abs(again - explanation.result) <= slack)) {
          throw new Error(`${measure} is ${explanation.result}, but ${explanation.formula} gives ${again}`);
        }
        for (const term of explanation.terms) {
          expect(term.symbol, measure).not.toBe('');
          if (term.origin.from === 'measure') expect(term.unit).toBe(told(plan, term.origin.measure).unit);
          const found = fromOrigin(job, plan, term);
          if (!(Math.abs(found - term.value) <= 1e-9)) {
            throw new Error(
              `${measure}: ${term.symbol} is ${term.value}, but ${JSON.stringify(term.origin)} is ${found}`,
            );
          }
        }
      }
    }),
    { numRuns: 200 },
  );
  // Every sum that is written down has been put to the test.
  expect(Object.keys(FORMULAS).filter((formula) => !seen.has(formula))).toEqual([]);
}, 30_000);

/** The numbers of the answer under the names that a question gives them. */
const ANSWERED: Readonly<Record<string, (answer: StairAnswer) => number | null>> = {
  totalRise: (a) => a.totalRise,
  risers: (a) => a.risers,
  treads: (a) => a.treads,
  unitRise: (a) => a.unitRise,
  run: (a) => a.run,
  totalRun: (a) => a.totalRun,
  twoRisePlusRun: (a) => a.twoRisePlusRun,
  pitch: (a) => (a.pitchDegrees * Math.PI) / 180,
  stepLength: (a) => a.stepLength,
  notchDepth: (a) => a.notchDepth,
  gaugeLine: (a) => a.gaugeLine,
  throat: (a) => a.throat,
  firstCut: (a) => a.firstRiserCut,
  drop: (a) => a.drop,
  seat: (a) => a.seat,
  plumbCut: (a) => a.plumbCut,
  lastLevelCut: (a) => a.lastLevelCut,
  headerMarkFinish: (a) => a.topBelowFinish,
  headerMark: (a) => a.topBelowSubfloor,
  stringerEnd: (a) => a.stringerEnd,
  headerFace: (a) => a.headerFace,
  boardLength: (a) => a.boardLength,
  stockLength: (a) => a.stockLength,
  firstMark: (a) => a.firstMark,
  diagonal: (a) => a.diagonal,
  spread: (a) => a.asCut.spread,
  treadRip: (a) => a.treadDepth,
  lastTreadRip: (a) => a.lastTreadDepth,
  topRiserRip: (a) => a.topRiserBoard,
  hangerRip: (a) => a.hangerHeight,
  riserOpening: (a) => a.riserOpening,
  headroom: (a) => a.headroom,
  openingNeeded: (a) => a.openingNeeded,
  headerContact: (a) => a.headerContact,
  depthNeeded: (a) => a.headerDepthNeeded,
  widthFinished: (a) => a.width?.finished ?? null,
  betweenSkirts: (a) => a.width?.betweenSkirts ?? null,
  treadLength: (a) => a.width?.treadLength ?? null,
  stringers: (a) => a.width?.stringers ?? null,
  spacing: (a) => a.width?.spacing ?? null,
  'asCut:1': (a) => a.asCut.risers[0] ?? null,
  'pole:1': (a) => a.finishedTops[1] ?? null,
  'riserRip:1': (a) => a.riserHeights[0] ?? null,
};

test('for any stair, the number explained is the number answered, and there is one wherever there is the other', () => {
  fc.assert(
    fc.property(anyStair, (job) => {
      const plan = planOrSkip(job);
      const answer = answerOf(job);
      for (const [measure, of] of Object.entries(ANSWERED)) {
        const result = explain(plan, measure as Measure)?.result ?? null;
        const shown = of(answer);
        if (shown === null || result === null) expect([measure, result]).toEqual([measure, shown]);
        else expect(result, measure).toBeCloseTo(shown, 9);
      }
    }),
    { numRuns: 60 },
  );
});

test('for any stair, stringers stand where they are set out, each of them and no other', () => {
  fc.assert(
    fc.property(anyStair, (job) => {
      const plan = planOrSkip(job);
      const centres = setOut(plan.layout, exactSheet(plan.layout)).filter(({ what }) => what === 'stringer-centre');
      for (const { step, value } of centres) {
        expect(told(plan, `stringerCentre:${step}`).result).toBeCloseTo(value, 9);
      }
      const asked = measuresOf(plan).filter((measure) => measure.startsWith('stringerCentre:'));
      expect(asked).toHaveLength(centres.length);
    }),
    { numRuns: 60 },
  );
});

test('everything that a stair has can be asked about, the rows one by one', () => {
  const asked = measuresOf(planOf(LOFT));
  const row = (name: string) => asked.filter((measure) => measure.startsWith(`${name}:`)).length;
  expect([row('tip'), row('corner'), row('riserRip'), row('asCut')]).toEqual([13, 12, 13, 14]);
  expect([row('pole'), row('poleToday'), row('poleCut'), row('poleCutToday')]).toEqual([15, 15, 13, 13]);
  expect(asked).toEqual(expect.arrayContaining(['totalRise', 'headroom', 'spacing', 'hangerRip', 'kickerSeat']));
  // No board over the top tread beside a hanger that is the riser, and no open risers.
  expect(asked).not.toContain('topRiserRip');
  expect(asked).not.toContain('riserOpening');
});

test('for any stair, what the sheet prints is what is explained, rounded as it says', () => {
  fc.assert(
    fc.property(anyStair, (job) => {
      const plan = planOrSkip(job);
      const { sheet } = plan;
      const near = (measure: Measure, printed: number | null | undefined) => {
        const explanation = explain(plan, measure);
        if (explanation === null) {
          expect(printed ?? null, measure).toBeNull();
          return;
        }
        const short = explanation.result - (printed as number);
        if (explanation.rounding === 'rip') {
          expect(short, measure).toBeGreaterThanOrEqual(-1e-6);
          expect(short, measure).toBeLessThan(sheet.ripStep + 1e-6);
        } else {
          expect(explanation.rounding, measure).toBe('mark');
          expect(Math.abs(short), measure).toBeLessThanOrEqual(sheet.step / 2 + 1e-6);
        }
      };
      sheet.tips.forEach((printed, i) => {
        near(`tip:${i + 1}`, printed);
        near(`corner:${i + 1}`, sheet.corners[i]);
        near(`riserRip:${i + 1}`, sheet.riserRips[i]);
      });
      near('gaugeLine', sheet.gaugeLine);
      near('end', sheet.end);
      near('endDepth', sheet.endDepth);
      near('firstCut', sheet.toeHeight);
      near('diagonal', sheet.diagonal);
      near('headerMark', sheet.headerMark);
      near('toeMark', sheet.toeMark);
      near('riserMark', sheet.riserMark);
      near('nosingMark', sheet.nosingMark);
      near('treadRip', sheet.treadRip);
      near('lastTreadRip', sheet.lastTreadRip);
      near('topRiserRip', sheet.topRiserRip);
      near('hangerRip', sheet.hangerRip);
    }),
    { numRuns: 60 },
  );
});

describe('the loft stair of our own', () => {
  test('the rise, from its four readings', () => {
    const { formula, terms, result, rounding } = loft('totalRise');
    expect(formula).toBe('totalRise');
    expect(terms.map(({ symbol, value, origin }) => [symbol, Math.round(inInches(value) * 1e9) / 1e9, origin])).toEqual(
      [
        ['M', 105.4375, { from: 'job', key: 'survey.rise' }],
        ['foot', 0, { from: 'default', key: 'survey.footBelowReading' }],
        ['fU', 0.75, { from: 'job', key: 'survey.upperToAdd' }],
        ['fL', 0.625, { from: 'job', key: 'survey.lowerToAdd' }],
      ],
    );
    expect(inInches(result)).toBeCloseTo(105.5625, 9);
    expect(rounding).toBe('fine');
  });

  test.each<[Measure, number]>([
    ['unitRise', 7.540179],
    ['stepLength', 12.52415],
    ['notchDepth', 6.0205],
    ['throat', 5.2295],
    ['firstCut', 7.10268],
    ['seat', 9.2663],
    ['plumbCut', 7.115],
    ['headerMark', 7.8527],
    ['headerContact', 4.1473],
    ['depthNeeded', 14.2177],
    ['boardLength', 161.9517],
    ['tip:13', 156.566],
    ['corner:12', 152.026],
    ['headroom', 79.965],
    ['openingNeeded', 126.0458],
    ['kickerToe', 5.6027],
    ['kickerSeat', 5.7663],
  ])('%s comes to %d', (measure, inches) => {
    const explanation = loft(measure);
    expect(Math.abs(inInches(explanation.result) - inches)).toBeLessThan(6e-4);
    expect(Math.abs(recomputed(explanation) - explanation.result)).toBeLessThan(1e-9);
  });

  test('a finish that nobody knows says so', () => {
    const { terms } = loft('totalRise', { survey: { upperToAdd: 'unknown' } });
    expect(terms[2]).toEqual({
      symbol: 'fU',
      value: 0,
      unit: 'mm',
      origin: { from: 'unknown', key: 'survey.upperToAdd' },
    });
    const { terms: drop } = loft('drop', { steps: { treadThickness: undefined } });
    expect(drop[0]?.origin).toEqual({ from: 'unknown', key: 'steps.treadThickness' });
  });

  test('a count and a run left to the program point at their rules', () => {
    const changes: Changes = { steps: { risers: 'auto', run: undefined } };
    expect(loft('risers', changes).terms[1]?.origin).toEqual({ from: 'rule', field: 'riser.max' });
    expect(loft('run', changes).terms[0]?.origin).toEqual({ from: 'rule', field: 'tread.min' });
    expect(loft('risers').formula).toBe('given');
  });

  test('another measure can be asked in turn, down to the readings', () => {
    const plan = planOf(LOFT);
    const down = (measure: Measure, depth: number): Set<string> => {
      expect(depth).toBeLessThan(20);
      return new Set(
        told(plan, measure).terms.flatMap(({ origin }) => {
          if (origin.from === 'measure') return [...down(origin.measure, depth + 1)];
          return 'key' in origin ? [origin.key] : [origin.from];
        }),
      );
    };
    expect([...down('tip:5', 0)].sort()).toEqual([
      'place',
      'steps.risers',
      'steps.run',
      'steps.treadThickness',
      'stringer.trim',
      'survey.footBelowReading',
      'survey.lowerToAdd',
      'survey.rise',
      'survey.upperToAdd',
    ]);
  });
});

describe('what a stair does not have is not explained', () => {
  test.each<[string, JobText, readonly Measure[]]>([
    [
      'a deck without walls, ceiling or kicker',
      DECK,
      [
        'widthFinished',
        'betweenSkirts',
        'treadLength',
        'treadOverhang',
        'stringers',
        'spacing',
        'stringerCentre:1',
        'headroom',
        'openingNeeded',
        'openingEdge',
        'kickerToe',
        'kickerSeat',
        'hangerRip',
        'riserOpening',
      ],
    ],
    [
      'marks that are not there',
      LOFT,
      [
        'tip:0',
        'tip:14',
        'corner:13',
        'asCut:15',
        'pole:15',
        'poleCut:0',
        'poleCutToday:14',
        'riserRip:14',
        'stringerCentre:0',
        'stringerCentre:9',
        'tip:1.5' as Measure,
        'topRiserRip',
      ],
    ],
    [
      'a stringer longer than any board',
      changed(LOFT, { survey: { rise: '200 in' }, steps: { risers: 26 } }),
      ['stockLength'],
    ],
    ['a stair without a header', changed(LOFT, { survey: { headerDepth: undefined } }), ['headerContact']],
    ['open risers', changed(LOFT, { steps: { riserThickness: '0 in' } }), ['riserRip:1']],
  ])('%s', (_, job, measures) => {
    const plan = planOf(job);
    for (const measure of measures) expect(explain(plan, measure), measure).toBeNull();
    for (const measure of measures) expect(measuresOf(plan)).not.toContain(measure);
  });
});

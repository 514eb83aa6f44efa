/**
 * What the cut stringer can carry, as a screening: a beam of the board's thickness and the throat's depth, simply
 * supported at seat and plumb end, its teeth neglected. Derivation: docs/maths/11-what-it-carries. Loads stand on the
 * level; the level span gives moment and reaction, the slope only the deflection. It answers within, exceeds, or not
 * in the data, and never that a stair is in order: an accepted table or a licensed designer decides that.
 */
import { atMost } from '../geometry/tolerance';
import type { StairPlan } from '../plan/planStair';
import { type Loads, loadsOf } from './loads';
import type { DeflectionLimit, LumberBook, WoodProperty } from './lumber';
import { addSpan, addTributary, keyTerm, type Member, memberOf, pitchTerm } from './member';
import { againstPublished, type PublishedAnswer } from './published';
import { factorTerms, valueTerm, type Wood, type WoodGap, woodOf } from './wood';
import { type CarryStep, type CarryTerm, type CarryUnit, type StepName, Working } from './working';

export type CarryCheck = 'bending' | 'shear' | 'sagLive' | 'sagPoint' | 'sagTotal' | 'foot' | 'head';

/** Why there is no answer: the wood, no stringer that spans, or a bearing that is hardware. */
export type CarryGap = WoodGap | 'walls' | 'hardware';

export type CarryVerdict = 'within' | 'exceeds' | 'not-in-data';

export interface CarryAnswer {
  readonly check: CarryCheck;
  readonly answer: CarryVerdict;
  /** What it comes to, and what the data allows; null where that cannot be said. */
  readonly is: number | null;
  readonly may: number | null;
  readonly unit: CarryUnit;
  readonly gap: CarryGap | null;
}

export interface Carry {
  /** Null where every stringer lies along a wall. */
  readonly member: Member | null;
  readonly wood: Wood | null;
  /** Why no answer is claimed; null where there are answers. */
  readonly gap: CarryGap | null;
  readonly loads: Loads;
  readonly steps: readonly CarryStep[];
  readonly answers: readonly CarryAnswer[];
  readonly published: readonly PublishedAnswer[];
}

/** @param book the lumber data */
export function screenCarry(plan: StairPlan, book: LumberBook): Carry {
  const loads = loadsOf(plan, book);
  const member = memberOf(plan.layout);
  const found = woodOf(plan.layout, book);
  const wood = typeof found === 'string' ? null : found;
  const working = new Working();
  const span = addSpan(working, plan);
  const published = againstPublished(plan, book, span);
  if (member === null) {
    const answers = CHECKS.map(({ check, unit }) => noAnswer(check, unit, 'walls'));
    return { member, wood, gap: 'walls', loads, steps: working.steps, answers, published };
  }
  addForces(working, plan, loads, member);
  if (wood !== null) addLimits(working, plan, book, wood);
  const gap = typeof found === 'string' ? found : null;
  return {
    member,
    wood,
    gap,
    loads,
    steps: working.steps,
    answers: CHECKS.map((each) => answerOf(each, working, gap)),
    published,
  };
}

interface Check {
  readonly check: CarryCheck;
  readonly unit: CarryUnit;
  readonly is: StepName;
  /** Null: the data has no figure for it whatever the wood. */
  readonly may: StepName | null;
}

const CHECKS: readonly Check[] = [
  { check: 'bending', unit: 'MPa', is: 'bendingIs', may: 'bendingMay' },
  { check: 'shear', unit: 'MPa', is: 'shearIs', may: 'shearMay' },
  { check: 'sagLive', unit: 'mm', is: 'sagLiveIs', may: 'sagLiveMay' },
  { check: 'sagPoint', unit: 'mm', is: 'sagPointIs', may: 'sagLiveMay' },
  { check: 'sagTotal', unit: 'mm', is: 'sagTotalIs', may: 'sagTotalMay' },
  { check: 'foot', unit: 'MPa', is: 'footIs', may: 'bearingMay' },
  { check: 'head', unit: 'mm', is: 'headNeeds', may: null },
];

function answerOf({ check, unit, is, may }: Check, { steps }: Working, gap: CarryGap | null): CarryAnswer {
  const value = (name: StepName | null) => steps.find((step) => step.name === name)?.result ?? null;
  const [found, limit] = [value(is), value(may)];
  if (found === null || limit === null || gap !== null) {
    return { check, answer: 'not-in-data', is: found, may: null, unit, gap: gap ?? 'hardware' };
  }
  return { check, answer: atMost(found / limit, 1) ? 'within' : 'exceeds', is: found, may: limit, unit, gap: null };
}

function noAnswer(check: CarryCheck, unit: CarryUnit, gap: CarryGap): CarryAnswer {
  return { check, answer: 'not-in-data', is: null, may: null, unit, gap };
}

/** Section, line loads, moments, stresses: what can be said of any wood. */
function addForces(working: Working, plan: StairPlan, loads: Loads, member: Member): void {
  const { stringer } = plan.layout;
  const width = keyTerm(plan, 'ws', 'stringer.stockThickness', stringer.stockThickness);
  const throat: CarryTerm = {
    symbol: 't',
    value: stringer.throat,
    unit: 'mm',
    origin: { from: 'measure', measure: 'throat' },
  };
  const b = addTributary(working, plan, member);
  const section = [width, throat];
  const modulus = working.add('modulus', 'mm3', section, (width.value * throat.value ** 2) / 6);
  working.add('inertia', 'mm4', section, (width.value * throat.value ** 3) / 12);
  const perLine = (load: CarryTerm) => (load.value * b) / 1000;
  const carried = working.of('b', 'tributary');
  const live = working.add('liveLine', 'N/mm', [loads.live, carried], perLine(loads.live));
  const dead = working.add('deadLine', 'N/mm', [loads.dead, carried], perLine(loads.dead));
  const line = working.add('line', 'N/mm', [working.of('wl', 'liveLine'), working.of('wd', 'deadLine')], live + dead);
  const L = working.of('L', 'span');
  const w = working.of('w', 'line');
  const wd = working.of('wd', 'deadLine');
  const { point } = loads;
  const uniform = working.add('momentUniform', 'Nmm', [w, L], (line * L.value ** 2) / 8);
  const onePerson = working.add(
    'momentPoint',
    'Nmm',
    [point, L, wd],
    (point.value * L.value) / 4 + (dead * L.value ** 2) / 8,
  );
  working.add(
    'bendingIs',
    'MPa',
    [working.of('Mw', 'momentUniform'), working.of('Mp', 'momentPoint'), working.of('S', 'modulus')],
    Math.max(uniform, onePerson) / modulus,
  );
  const spread = working.add('reactionUniform', 'N', [w, L], (line * L.value) / 2);
  const close = working.add('reactionPoint', 'N', [point, wd, L], point.value + (dead * L.value) / 2);
  const reactions = [working.of('Vw', 'reactionUniform'), working.of('Vp', 'reactionPoint')];
  const most = Math.max(spread, close);
  working.add('shearIs', 'MPa', [...reactions, ...section], (1.5 * most) / (width.value * throat.value));
  addFoot(working, plan, reactions, most);
}

/** On what the kicker leaves of the seat. */
function addFoot(working: Working, plan: StairPlan, reactions: readonly CarryTerm[], most: number): void {
  const { stockThickness } = plan.layout.stringer;
  const seat = working.of('a', 'seat');
  const terms = [...reactions, keyTerm(plan, 'ws', 'stringer.stockThickness', stockThickness), seat];
  working.add('footIs', 'MPa', terms, most / (stockThickness * seat.value));
}

/** What the wood may bear, and how far it bends: only for wood that the data has. */
function addLimits(working: Working, plan: StairPlan, book: LumberBook, wood: Wood): void {
  const allowed = (name: StepName, symbol: string, what: WoodProperty) => {
    const terms = [valueTerm(symbol, what, wood), ...factorTerms(what, wood, plan.layout, book)];
    return working.add(
      name,
      'MPa',
      terms,
      terms.reduce((product, { value }) => product * value, 1),
    );
  };
  allowed('bendingMay', 'Fb', 'bending');
  allowed('shearMay', 'Fv', 'shear');
  const bearing = allowed('bearingMay', 'Fc', 'bearing');
  const stiffness = allowed('stiffness', 'E', 'stiffness');
  addSags(working, plan, book, stiffness);
  const reactions = [working.of('Vw', 'reactionUniform'), working.of('Vp', 'reactionPoint')];
  const thickness = keyTerm(plan, 'ws', 'stringer.stockThickness', plan.layout.stringer.stockThickness);
  const most = Math.max(...reactions.map(({ value }) => value));
  const head = [...reactions, thickness, working.of('Fcm', 'bearingMay')];
  working.add('headNeeds', 'mm', head, most / (thickness.value * bearing));
}

/** Square to the stringer, held to a part of its span along the slope. */
function addSags(working: Working, plan: StairPlan, book: LumberBook, stiffness: number): void {
  const { cos } = plan.layout.flight;
  const L = working.of('L', 'span');
  const bent = [L, working.of('Em', 'stiffness'), working.of('I', 'inertia'), pitchTerm(plan)];
  const resists = stiffness * working.of('I', 'inertia').value * cos ** 2;
  const spread = (name: StepName, w: CarryTerm) =>
    working.add(name, 'mm', [w, ...bent], (5 * w.value * L.value ** 4) / (384 * resists), 'sag.spread');
  const limit = (name: StepName, what: DeflectionLimit['what']) => {
    const row = book.deflection.find((each) => each.what === what) as DeflectionLimit;
    const { confidence, sources, part } = row;
    const share: CarryTerm = {
      symbol: 'part',
      value: part,
      unit: 'count',
      origin: { from: 'data', what: 'part', confidence, sources },
    };
    working.add(name, 'mm', [working.of('Ls', 'slope'), share], working.of('Ls', 'slope').value / part, 'sag.may');
  };
  spread('sagLiveIs', working.of('w', 'liveLine'));
  const P = working.steps.flatMap(({ terms }) => terms).find(({ symbol }) => symbol === 'P') as CarryTerm;
  working.add('sagPointIs', 'mm', [P, ...bent], (P.value * L.value ** 3) / (48 * resists), 'sag.point');
  limit('sagLiveMay', 'live');
  spread('sagTotalIs', working.of('w', 'line'));
  limit('sagTotalMay', 'total');
}

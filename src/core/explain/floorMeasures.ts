/** A lower floor that is not level: what lies under the toe, and a toe for each stringer. Frame: layout/slope. */
import { sign } from '../units/exact';
import type { PlainMeasure, RowMeasure } from './measures';
import type { Because, Entry, Teller } from './teller';

export const FLOOR = {
  floorAtToe: {
    unit: 'mm',
    shown: 'fine',
    result: ({ layout }) => (isLevel(layout.job.survey) ? null : layout.stringer.heel.toeY),
    because: (tell) => {
      const under = [tell.of('zs', 'seatHeight'), ...along(tell), riser(tell)];
      const { stringer } = tell.plan.layout.stringer.master;
      return stringer === 0
        ? { formula: 'floorAtToe', terms: under }
        : { formula: 'floorAtToe.across', terms: [...under, ...across(tell, stringer)] };
    },
  },
} satisfies Partial<Record<PlainMeasure, Entry>>;

export const TOES = {
  toe: {
    unit: 'mm',
    shown: 'mark',
    result: ({ layout: { stringer } }, step) =>
      stringer.feet.find((foot) => foot.stringer === step && step > 0)?.heel.firstRiserCut ?? null,
    because: (tell, step) => ({
      formula: 'toe',
      terms: [
        tell.of('R', 'unitRise'),
        tell.length('t', 'steps.treadThickness'),
        tell.of('zs', 'seatHeight'),
        ...along(tell),
        riser(tell),
        ...across(tell, step),
      ],
    }),
  },
} satisfies Partial<Record<RowMeasure, Entry>>;

/** True where nothing of the floor's slope goes into a number. */
export function isLevel({ fallAlong, fallAcross }: Teller['job']['survey']): boolean {
  return sign(fallAlong.fall) === 0 && sign(fallAcross.fall) === 0;
}

/** How the floor falls away from the header: so much over so much. */
export function along(tell: Teller) {
  return [tell.length('fa', 'survey.fallAlong'), tell.length('oa', 'survey.fallAlongOver')];
}

/** How it falls to the right, and where a stringer stands between the walls. */
export function across(tell: Teller, stringer: number) {
  return [
    tell.length('fc', 'survey.fallAcross'),
    tell.length('oc', 'survey.fallAcrossOver'),
    tell.of('c', `stringerCentre:${stringer}`),
    tell.length('Wf', 'survey.widthFraming'),
  ];
}

function riser(tell: Teller) {
  return tell.length('tr', 'steps.riserThickness');
}

/** Riser 1's board reaches the lowest corner under it, and is scribed. */
export function scribedRiser(tell: Teller): Because {
  const terms = [
    tell.of('R', 'unitRise'),
    tell.length('t', 'steps.treadThickness'),
    tell.of('zs', 'seatHeight'),
    ...along(tell),
    riser(tell),
  ];
  if (tell.plan.layout.width === null) return { formula: 'riserRip.onSlope', terms };
  return {
    formula: 'riserRip.onSlope.across',
    terms: [
      ...terms,
      tell.length('fc', 'survey.fallAcross'),
      tell.length('oc', 'survey.fallAcrossOver'),
      tell.of('Wsk', 'betweenSkirts'),
    ],
  };
}

/** What the floor has fallen between where the tape stood and where the flight lands. */
export function sinceReading(tell: Teller) {
  return [...along(tell), tell.of('X', 'headerFace'), tell.length('r', 'survey.readingFromHeader')];
}

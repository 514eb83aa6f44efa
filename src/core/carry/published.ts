/**
 * The stringer beside figures that others have printed for cut stringers, each with whose figure it is. They
 * disagree; none of them is chosen here.
 */
import { atLeast, atMost } from '../geometry/tolerance';
import type { StairLayout } from '../layout/layoutStair';
import type { StairPlan } from '../plan/planStair';
import { inchMm } from '../units/exact';
import type { LumberBook, PublishedFigure, PublishedThing } from './lumber';

export interface PublishedAnswer {
  readonly figure: PublishedFigure;
  readonly answer: 'within' | 'exceeds' | 'short' | 'not-in-data';
  /** Millimetres, or how many; null where it has not been measured. */
  readonly is: number | null;
  readonly asked: number;
}

/** @param span level, from bearing to bearing */
export function againstPublished({ layout }: StairPlan, { published }: LumberBook, span: number): PublishedAnswer[] {
  return published.filter((figure) => isFor(figure, layout)).map((figure) => answerTo(figure, layout, span));
}

function isFor({ support, widerThan, risers }: PublishedFigure, { job, flight, width }: StairLayout): boolean {
  if (support !== undefined && support !== (job.carry.support ?? 'free-standing')) return false;
  if (risers === 'closed' && flight.riserThickness === 0) return false;
  // Where nobody has measured the width, the figure stands there without an answer.
  return widerThan === undefined || width === null || width.finished > inMm(widerThan);
}

function answerTo(figure: PublishedFigure, layout: StairLayout, span: number): PublishedAnswer {
  const { sense, unit, value } = figure;
  const asked = unit === 'count' ? value : inMm({ value, unit });
  const is = thingOf(figure.what, layout, span);
  if (is === null) return { figure, answer: 'not-in-data', is, asked };
  const isMet = sense === 'least' ? atLeast(is, asked) : atMost(is, asked);
  return { figure, answer: isMet ? 'within' : sense === 'least' ? 'short' : 'exceeds', is, asked };
}

function thingOf(what: PublishedThing, { stringer, width }: StairLayout, span: number): number | null {
  switch (what) {
    case 'throat':
      return stringer.throat;
    case 'depth':
      return stringer.stockDepth;
    case 'thickness':
      return stringer.stockThickness;
    case 'span':
      return span;
    case 'spacing':
      return width?.spacing ?? null;
    case 'count':
      return width?.stringers ?? null;
  }
}

function inMm({ value, unit }: { readonly value: number; readonly unit: 'in' | 'mm' }): number {
  return unit === 'in' ? inchMm(value) : value;
}

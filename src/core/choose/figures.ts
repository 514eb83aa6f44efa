/** The figures by which one layout is weighed against another: millimetres, radians, counts. */
import type { Finding, FindingKind } from '../codes/findings';
import type { Status } from '../codes/judge';
import type { StairPlan } from '../plan/planStair';

export interface Figures {
  readonly risers: number;
  readonly run: number;
  readonly unitRise: number;
  readonly twoRisePlusRun: number;
  /** Radians. */
  readonly pitch: number;
  /** Hung: to the finished face of the top riser. Level with the floor: to the stringer's end. */
  readonly totalRun: number;
  /** From the face of riser 1 to the header, which is what the floor has to have room for. */
  readonly headerFace: number;
  readonly headroom: number | null;
  readonly openingNeeded: number | null;
  readonly throat: number;
  readonly boardLength: number;
  readonly stockLength: number | null;
  readonly headerContact: number | null;
}

/** The same names: this one less that one; null where either is not known. */
export type Differences = { readonly [Name in keyof Figures]: number | null };

export type FindingCounts = Readonly<Record<FindingKind, Readonly<Record<Status, number>>>>;

export function figuresOf({ layout }: StairPlan): Figures {
  const { flight, stringer, opening } = layout;
  return {
    risers: flight.risers,
    run: flight.run,
    unitRise: flight.unitRise,
    twoRisePlusRun: 2 * flight.unitRise + flight.run,
    pitch: flight.pitch,
    totalRun: stringer.top.hung ? flight.runToTopRiser : stringer.top.endX,
    headerFace: stringer.top.headerX,
    headroom: opening.headroom,
    openingNeeded: opening.needed,
    throat: stringer.throat,
    boardLength: stringer.boardLength,
    stockLength: stringer.stockLength,
    headerContact: stringer.bearing.contact,
  };
}

export function differences(these: Figures, those: Figures): Differences {
  const names = Object.keys(these) as (keyof Figures)[];
  const less = (name: keyof Figures): number | null => {
    const [a, b] = [these[name], those[name]];
    return a === null || b === null ? null : a - b;
  };
  return Object.fromEntries(names.map((name) => [name, less(name)])) as Differences;
}

export function countFindings(findings: readonly Finding[]): FindingCounts {
  const none = () => ({ meets: 0, breaks: 0, close: 0, 'not-checked': 0 });
  const counts = { rule: none(), build: none(), taste: none() };
  for (const { kind, status } of findings) counts[kind][status] += 1;
  return counts;
}

/** Fields of one kind that are broken, each once, in the findings' own order. */
export function brokenFields(findings: readonly Finding[], kind: FindingKind): readonly string[] {
  const broken = findings.filter((finding) => finding.kind === kind && finding.status === 'breaks');
  return [...new Set(broken.map(({ field }) => field))];
}

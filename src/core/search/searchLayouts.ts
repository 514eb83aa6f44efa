/**
 * Every layout that a survey allows: each top, each riser count, each run on the grid.
 *
 * Method: the floats of quick.ts say by how much a candidate keeps each bound. Clear of every bound by more
 * than CLEAR it is in, short of one by more than CLEAR it is out, and between the two the layout is made and
 * the judges of the rules decide, exactly: on a limit meets it. A bound that looks at the riser count or at
 * the run alone is decided once for each of them.
 *
 * A generator, so that a page can do it in slices: it stops after every riser count.
 */
import { atMost } from '../geometry/tolerance';
import { layoutStair, type StairLayout } from '../layout/layoutStair';
import { compare, type Exact, toMm } from '../units/exact';
import { type Bound, boundsOf } from './bounds';
import { type Candidate, type Frame, frameOf, stairWith } from './candidate';
import { cautionCounter } from './cautions';
import { type Fixed, fixedOf, type Quick, quickFigures, shapeMargin } from './quick';
import type { Search } from './wishes';

/** Millimetres; a thousand times what floats of this size can be out, and far less than a rule tells apart. */
const CLEAR = 1e-4;

export interface Found extends Candidate {
  /** The same for the same candidate, whatever else changes. */
  readonly id: string;
  readonly quick: Quick;
  /** The shortest board to be had that holds it, millimetres. */
  readonly stockLength: number;
  readonly cautions: number;
}

export interface SearchResult {
  readonly frame: Frame;
  readonly bounds: readonly Bound[];
  readonly sifter: Sifter;
  /** Every one that is allowed, by top, riser count and run. */
  readonly found: readonly Found[];
  readonly looked: number;
  /** How many were so near to a bound that the layout was asked. */
  readonly decidedExactly: number;
}

/** @returns stops after each riser count of each top; the last value is the answer */
export function* searchLayouts(search: Search): Generator<undefined, SearchResult> {
  const sifter = new Sifter(search);
  const { frame } = sifter;
  const found: Found[] = [];
  let looked = 0;
  for (const top of search.wishes.tops) {
    for (let risers = frame.fewest; risers <= frame.most; risers += 1) {
      looked += frame.mostSteps - frame.leastSteps + 1;
      if (!sifter.isCountOut(top, risers)) {
        for (const steps of sifter.runsIn) {
          const one = sifter.sift(top, risers, steps);
          if (one !== null) found.push(one);
        }
      }
      yield;
    }
  }
  return { frame, bounds: sifter.bounds, sifter, found, looked, decidedExactly: sifter.decidedExactly };
}

type Top = Candidate['top'];

/** Decides candidates one by one, and remembers what is decided once for many. */
export class Sifter {
  readonly frame: Frame;
  readonly bounds: readonly Bound[];
  /** Runs that no bound on the run alone rules out. */
  readonly runsIn: readonly number[];
  decidedExactly = 0;
  private readonly fixed = new Map<Top, Fixed>();
  private readonly onRisers: readonly Bound[];
  private readonly onRun: readonly Bound[];
  private readonly onAll: readonly Bound[];
  private readonly verdicts = new Map<string, boolean>();
  private readonly depths: readonly Exact[];
  private readonly countCautions: (quick: Quick) => number;

  constructor(private readonly search: Search) {
    const { job, wishes } = search;
    this.frame = frameOf(job);
    this.countCautions = cautionCounter(search);
    this.depths = wishes.stockDepths.length === 0 ? [job.stringer.stockDepth] : wishes.stockDepths;
    for (const top of wishes.tops) this.fixed.set(top, fixedOf(stairWith(job, this.candidate(top, 2, 1, 0))));
    this.bounds = boundsOf(search, this.anyLayout());
    const of = (reach: Bound['reach']) => this.bounds.filter((bound) => bound.reach === reach);
    this.onRisers = of('risers');
    this.onRun = of('run');
    this.onAll = [...of('none'), ...of('all')];
    this.runsIn = this.allRuns().filter((steps) => !this.isRunOut(steps));
  }

  allRuns(): readonly number[] {
    const { leastSteps, mostSteps } = this.frame;
    return Array.from({ length: mostSteps - leastSteps + 1 }, (_, i) => leastSteps + i);
  }

  /** True where the riser count alone rules it out, by more than floats can be wrong. */
  isCountOut(top: Top, risers: number): boolean {
    const quick = this.quick(top, risers, this.frame.leastSteps, 0);
    return this.onRisers.some((bound) => bound.margin(quick) < -CLEAR);
  }

  /** @returns the candidate with the shallowest board that will do, or null */
  sift(top: Top, risers: number, steps: number): Found | null {
    for (let at = 0; at < this.depths.length; at += 1) {
      const quick = this.quick(top, risers, steps, at);
      if (this.isIn(quick, top, risers, steps, at)) return this.found(quick, top, risers, steps, at);
    }
    return null;
  }

  /** @returns the bounds that it breaks with one board, or null where it leaves no stair at all */
  broken(top: Top, risers: number, steps: number, depthAt = 0): readonly number[] | null {
    const quick = this.quick(top, risers, steps, depthAt);
    const layoutOf = this.lazyLayout(top, risers, steps, depthAt);
    const shape = shapeMargin(quick);
    if (shape < -CLEAR || (shape <= CLEAR && layoutOf() === null)) return null;
    const broken: number[] = [];
    for (let at = 0; at < this.bounds.length; at += 1) {
      const verdict = this.verdict(this.bounds[at] as Bound, quick, steps, layoutOf);
      if (verdict === null) return null;
      if (!verdict) broken.push(at);
    }
    return broken;
  }

  candidate(top: Top, risers: number, steps: number, depthAt: number): Candidate {
    return { top, risers, steps, depth: this.depths[depthAt] as Exact };
  }

  layout(top: Top, risers: number, steps: number, depthAt: number): StairLayout | null {
    const layout = layoutStair(
      stairWith(this.search.job, this.candidate(top, risers, steps, depthAt)),
      this.search.limits,
    );
    return layout.ok ? layout.value : null;
  }

  quick(top: Top, risers: number, steps: number, depthAt: number): Quick {
    const depth = toMm(this.depths[depthAt] as Exact);
    return quickFigures(this.fixed.get(top) as Fixed, risers, steps * this.frame.gridMm, depth);
  }

  depthPlace(depth: Exact): number {
    return this.depths.findIndex((each) => compare(each, depth) === 0);
  }

  get depthCount(): number {
    return this.depths.length;
  }

  private isRunOut(steps: number): boolean {
    const [top] = this.search.wishes.tops;
    if (top === undefined) return true;
    const quick = this.quick(top, this.frame.fewest, steps, 0);
    return this.onRun.some((bound) => bound.margin(quick) < -CLEAR);
  }

  private isIn(quick: Quick, top: Top, risers: number, steps: number, depthAt: number): boolean {
    const shape = shapeMargin(quick);
    if (shape < -CLEAR) return false;
    for (const bound of this.onAll) if (bound.margin(quick) < -CLEAR) return false;
    let layoutOf: (() => StairLayout | null) | null = null;
    const ask = () => {
      layoutOf ??= this.lazyLayout(top, risers, steps, depthAt);
      return layoutOf;
    };
    if (shape <= CLEAR && ask()() === null) return false;
    for (const bound of this.bounds) {
      const margin = bound.margin(quick);
      if (margin > CLEAR) continue;
      if (margin < -CLEAR || this.verdict(bound, quick, steps, ask()) !== true) return false;
    }
    return true;
  }

  /** Null: so near to a bound that the layout was asked, and there is none. */
  private verdict(bound: Bound, quick: Quick, steps: number, layoutOf: () => StairLayout | null): boolean | null {
    const margin = bound.margin(quick);
    if (margin > CLEAR) return true;
    if (margin < -CLEAR) return false;
    const what = bound.reach === 'risers' ? quick.risers : bound.reach === 'run' ? steps : null;
    const key = what === null ? null : `${this.bounds.indexOf(bound)} ${what}`;
    const before = key === null ? undefined : this.verdicts.get(key);
    if (before !== undefined) return before;
    const layout = layoutOf();
    if (layout === null) return null;
    const verdict = bound.holds(layout);
    if (key !== null) this.verdicts.set(key, verdict);
    return verdict;
  }

  private lazyLayout(top: Top, risers: number, steps: number, depthAt: number): () => StairLayout | null {
    let layout: StairLayout | null | undefined;
    return () => {
      if (layout === undefined) {
        layout = this.layout(top, risers, steps, depthAt);
        this.decidedExactly += 1;
      }
      return layout;
    };
  }

  private found(quick: Quick, top: Top, risers: number, steps: number, depthAt: number): Found {
    const needed = quick.boardLength + 2 * quick.fixed.trim;
    const { stockLengths } = this.search.wishes;
    return {
      top,
      risers,
      steps,
      depth: this.depths[depthAt] as Exact,
      id: `${top} ${risers} ${steps}`,
      quick,
      stockLength: stockLengths.find((length) => atMost(needed, length)) ?? (stockLengths.at(-1) as number),
      cautions: this.countCautions(quick),
    };
  }

  /** The middle of the frame first: that is where stairs are. */
  private anyLayout(): StairLayout | null {
    const { frame } = this;
    const runs = this.allRuns();
    for (const top of this.search.wishes.tops) {
      for (let risers = frame.fewest; risers <= frame.most; risers += 1) {
        for (let at = 0; at < runs.length; at += 16) {
          const steps = runs[at] as number;
          for (let depth = this.depths.length - 1; depth >= 0; depth -= 1) {
            if (shapeMargin(this.quick(top, risers, steps, depth)) <= CLEAR) continue;
            const layout = this.layout(top, risers, steps, depth);
            if (layout !== null) return layout;
          }
        }
      }
    }
    return null;
  }
}

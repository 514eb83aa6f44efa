/** The walk through one list: where it stands, what is ticked off, and the ways on. */
import { useMemo } from 'react';
import type { StairPlan } from '../../core/plan/planStair';
import { type MarkEntry, type MarkLists, markLists } from '../../core/stringer/markList';
import type { WalkList } from '../../state/view';
import { useStair } from '../stairOnShow';
import { useBench, usePlannerState } from '../usePlanner';
import { type TickState, tickState, withoutList, withoutTick, withTick } from './ticks';
import { leaveBehind } from './wayBack';

const NONE: readonly string[] = [];

export interface WalkEntry extends MarkEntry {
  readonly tick: TickState;
}

export interface WalkProgress {
  readonly entries: readonly WalkEntry[];
  readonly left: number;
  /** The first that is not ticked off; the first of all where none is left. */
  readonly firstLeft: number;
}

export function useProgress(plan: StairPlan, list: WalkList): WalkProgress {
  const kept = useTicks();
  return useMemo(() => {
    const entries = listsOf(plan)[list].map((entry) => ({ ...entry, tick: tickState(kept, list, entry) }));
    const left = entries.filter(({ tick }) => tick !== 'ticked').length;
    const firstLeft = Math.max(
      0,
      entries.findIndex(({ tick }) => tick !== 'ticked'),
    );
    return { entries, left, firstLeft };
  }, [plan, kept, list]);
}

export interface WalkActions {
  go(at: number): void;
  tick(entry: MarkEntry): void;
  untick(entry: MarkEntry): void;
  /** In one step, so that no crash comes between. */
  tickAndGo(entry: MarkEntry, at: number): void;
  untickAll(): void;
  leave(): void;
}

export function useWalkActions(list: WalkList): WalkActions {
  const { actions, store } = useBench().planner;
  const id = useStairId();
  return useMemo(() => {
    const ticks = () => store.getState().ticked;
    const withList = (next: (kept: readonly string[]) => readonly string[]) => ({
      ...ticks(),
      [id]: next(ticks()[id] ?? NONE),
    });
    return {
      go: (at) => actions.look({ walk: { list, at } }),
      tick: (entry) => actions.look({ ticked: withList((kept) => withTick(kept, list, entry)) }),
      untick: (entry) => actions.look({ ticked: withList((kept) => withoutTick(kept, list, entry)) }),
      tickAndGo: (entry, at) =>
        actions.look({ ticked: withList((kept) => withTick(kept, list, entry)), walk: { list, at } }),
      untickAll: () => actions.look({ ticked: withList((kept) => withoutList(kept, list)) }),
      leave: () => {
        leaveBehind(list);
        actions.look({ walk: null });
      },
    };
  }, [actions, store, id, list]);
}

function useTicks(): readonly string[] {
  const id = useStairId();
  return usePlannerState((state) => state.ticked[id] ?? NONE);
}

function useStairId(): string {
  const { job, index } = useStair();
  return job.stairs[index]?.id ?? '';
}

/** A plan never changes once it is made, and every step of the walk asks for its lists. */
const lists = new WeakMap<StairPlan, MarkLists>();

function listsOf(plan: StairPlan): MarkLists {
  const known = lists.get(plan) ?? markLists(plan.layout, plan.sheet);
  lists.set(plan, known);
  return known;
}

/**
 * What is ticked off is kept with the number that it had: when the stair changes, the tick of a number
 * that moved no longer fits, and when the change is undone it fits again, as the mark on the board does.
 */
import type { MarkEntry } from '../../core/stringer/markList';
import type { WalkList } from '../../state/view';

export type TickState = 'ticked' | 'moved' | 'open';
type Entry = Pick<MarkEntry, 'id' | 'value'>;

/** Far below what a tape shows, and free of the last bits of a float. */
const DECIMALS = 3;

export function tickOf(list: WalkList, { id, value }: Entry): string {
  return `${ofEntry(list, id)}${Number(value.toFixed(DECIMALS))}`;
}

/** `moved`: it was ticked off, but at another number. */
export function tickState(kept: readonly string[], list: WalkList, entry: Entry): TickState {
  if (kept.includes(tickOf(list, entry))) return 'ticked';
  return kept.some((tick) => tick.startsWith(ofEntry(list, entry.id))) ? 'moved' : 'open';
}

/** Ticked off at this number, and at no other one any more. */
export function withTick(kept: readonly string[], list: WalkList, entry: Entry): readonly string[] {
  return [...withoutTick(kept, list, entry), tickOf(list, entry)];
}

export function withoutTick(kept: readonly string[], list: WalkList, { id }: Entry): readonly string[] {
  return kept.filter((tick) => !tick.startsWith(ofEntry(list, id)));
}

export function withoutList(kept: readonly string[], list: WalkList): readonly string[] {
  return kept.filter((tick) => !tick.startsWith(`${list}/`));
}

function ofEntry(list: WalkList, id: string): string {
  return `${list}/${id}@`;
}

/**
 * Which list was just left. The screens come back as new ones, so that no element could be remembered:
 * the key that starts the same walk takes the focus when it comes.
 */
import type { WalkList } from '../../state/view';

let justLeft: WalkList | null = null;

export function leaveBehind(list: WalkList): void {
  justLeft = list;
}

/** True once, for the list that was left. */
export function comesBackFrom(list: WalkList): boolean {
  if (justLeft !== list) return false;
  justLeft = null;
  return true;
}

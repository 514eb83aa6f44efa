/** A wedge from above and one from below, so that the place between them stays in sight. */
export function pointers(x: number, top: number, bottom: number): string {
  return `M${x} ${top + 6}l-7 -12h14zM${x} ${bottom - 6}l-7 12h14z`;
}

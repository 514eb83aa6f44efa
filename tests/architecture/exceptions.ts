/**
 * What is longer than the limits allow, and why it is let be. The number is the length today: a
 * test fails when it grows, and also when it has fallen and the number here has not.
 */
export interface Exception {
  readonly path: string;
  /** A function's or a component's name; left out for the file itself. */
  readonly name?: string;
  readonly lines: number;
  readonly reason: string;
}

export const EXCEPTIONS: readonly Exception[] = [];

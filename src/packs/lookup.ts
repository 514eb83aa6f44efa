/** Where a user can look a code up, and how sure each address is. */

/** Read there; a page below it was read; seen only where others cite it; recalled and not tried. */
export type AddressMark = 'read' | 'page-below-read' | 'cited' | 'memory';

export interface LookupAddress {
  readonly what: string;
  readonly addresses: readonly string[];
  readonly mark: AddressMark;
}

export async function loadLookup(): Promise<readonly LookupAddress[]> {
  const { default: list } = await import('./lookup.json');
  return list as readonly LookupAddress[];
}

/** Where a user can look a code up, and how sure each address is. */

import type { AddressMark } from '../core/codes/rulePack';

export interface LookupAddress {
  readonly what: string;
  readonly addresses: readonly string[];
  readonly mark: AddressMark;
}

export async function loadLookup(): Promise<readonly LookupAddress[]> {
  const { default: list } = await import('./lookup.json');
  return list as readonly LookupAddress[];
}

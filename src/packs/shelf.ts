/**
 * Where packs stand ready. Each is read the first time that it is asked for; one that is refused is
 * listed with its reasons and takes no other down, except those that are built on it.
 */
import type { RulePack } from '../core/codes/rulePack';
import type { Problem } from '../core/result';

export interface PackSource {
  /** The pack that it is built on. */
  readonly base?: string;
  readonly load: () => Promise<{ readonly default: unknown }>;
}

export interface RefusedPack {
  readonly id: string;
  readonly problems: readonly Problem[];
}

export interface Shelf {
  /** Only what is loaded already: what is not is the same as not there. */
  readonly find: (id: string) => RulePack | undefined;
  readonly ready: () => readonly RulePack[];
  /** @returns the pack, or undefined for one that there is not, or that is refused; fails if it cannot be fetched */
  readonly load: (id: string) => Promise<RulePack | undefined>;
  readonly refused: () => readonly RefusedPack[];
}

/**
 * @param packs those that are read already, by id; what is fetched is put there too
 * @param late packs that are fetched when they are asked for, by id
 * @param faults where those are put that are refused
 */
export function makeShelf(
  packs: Map<string, RulePack>,
  late: Readonly<Record<string, PackSource>>,
  faults: Map<string, readonly Problem[]> = new Map(),
): Shelf {
  function find(id: string): RulePack | undefined {
    return packs.get(id);
  }

  /** The reader comes with the first pack that needs it: it is large, and the page starts without. */
  async function keep(id: string, data: unknown, base?: RulePack): Promise<RulePack | undefined> {
    const { readPack } = await import('./readPack');
    // Another call may have been first while this one waited.
    const known = packs.get(id);
    if (known !== undefined) return known;
    const reading = readPack(data, base);
    if (reading.ok) packs.set(id, reading.value);
    else faults.set(id, reading.problems);
    return packs.get(id);
  }

  async function load(id: string): Promise<RulePack | undefined> {
    const known = find(id);
    const source = Object.hasOwn(late, id) ? late[id] : undefined;
    if (known !== undefined || source === undefined || faults.has(id)) return known;
    const base = source.base === undefined ? undefined : await load(source.base);
    const { default: data } = await source.load();
    return keep(id, data, base);
  }

  return {
    find,
    ready: () => [...packs.values()],
    load,
    refused: () => [...faults].map(([id, problems]) => ({ id, problems })),
  };
}

import type { Attachment } from "../../core/model/tables.ts";

/** Owners of wires other than ours by pole, in the order of their names; poles with the same owners share one list. */
export type OtherParties = ReadonlyMap<string, readonly string[]>;

/** Owners of wires other than ours, by pole. */
export function otherPartiesByPole(attachments: ReadonlyMap<string, Attachment>): OtherParties {
  const byPole = new Map<string, Set<string>>();
  for (const { poleId, owner, kind } of attachments.values()) {
    if (kind === "ourStrand") continue;
    const owners = byPole.get(poleId);
    if (owners) owners.add(owner);
    else byPole.set(poleId, new Set([owner]));
  }
  const shared = new Map<string, readonly string[]>();
  const lists = new Map<string, readonly string[]>();
  for (const [poleId, owners] of byPole) {
    const list = [...owners].sort();
    const key = JSON.stringify(list);
    lists.set(poleId, shared.get(key) ?? list);
    if (!shared.has(key)) shared.set(key, list);
  }
  return lists;
}

const nobody: readonly string[] = [];

/** Owners with wires on both of two poles: their wires run beside ours. */
export function ownersOnBoth(parties: OtherParties, onePoleId: string, otherPoleId: string): readonly string[] {
  const one = parties.get(onePoleId) ?? nobody;
  const other = parties.get(otherPoleId) ?? nobody;
  return one === other ? one : one.filter((owner) => other.includes(owner));
}

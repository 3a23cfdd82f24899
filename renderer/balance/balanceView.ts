import type { MoveTrial } from "../../core/edits/moveTrial.ts";
import type { RefKey } from "../app/ref.ts";

/** What the balance shows: ports terminal by terminal, fibers tube by tube, hub outputs leg by leg, light terminal by terminal. */
export const balanceTabs = ["ports", "fibers", "hub", "light"] as const;
export type BalanceTab = (typeof balanceTabs)[number];

/** A port under the hand; `port` from 1. */
export type BalanceSpot = { readonly terminalId: string; readonly port: number };

/** Drops on their way to another terminal; nothing is changed until they are let go. */
export type BalanceHand = {
  readonly dropIds: readonly string[];
  readonly trial: (terminalId: string) => MoveTrial;
  readonly target: { readonly terminalId: string; readonly trial: MoveTrial } | null;
};

/** What the eye and hand are at in the balance; never part of the route. */
export type BalanceView = {
  readonly isOpen: boolean;
  /** Part of the height it takes. */
  readonly sizeFrac: number;
  readonly tab: BalanceTab;
  readonly spot: BalanceSpot | null;
  /** Drops marked to go together, in the order they were. */
  readonly marked: readonly string[];
  readonly hand: BalanceHand | null;
  /** By how much evening out may make all drops longer, as typed; null while nobody asks. */
  readonly evenBy: string | null;
};

export const plainBalance: BalanceView = {
  isOpen: false,
  sizeFrac: 0.65,
  tab: "ports",
  spot: null,
  marked: [],
  hand: null,
  evenBy: null,
};

/** The balance after an edit: what is gone is marked no longer, and nothing stays in the hand. */
export function stillThere(balance: BalanceView, isThere: (ref: RefKey) => boolean): BalanceView {
  const { spot, marked, hand } = balance;
  const kept = marked.filter((id) => isThere(`drop/${id}`));
  const isSpotGone = spot !== null && !isThere(`terminal/${spot.terminalId}`);
  if (!hand && !isSpotGone && kept.length === marked.length) return balance;
  return { ...balance, hand: null, marked: kept, spot: isSpotGone ? null : spot };
}

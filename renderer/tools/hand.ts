import { type RefKey, refKey } from "../app/ref.ts";
import type { PoleSnap } from "./poleSnap.ts";
import type { Snap } from "./strandSnap.ts";

/** A terminal on its way along the strand. */
export type TerminalHand = {
  readonly kind: "terminal";
  readonly terminalId: string;
  readonly spanId: string;
  /** From the span's first pole, m. */
  readonly offsetM: number;
  /** What it has snapped to. */
  readonly snap: Snap | null;
  /** Why it cannot be let go here, or null where it can. */
  readonly refusal: string | null;
};

/** A pole on its way over the ground. */
type PoleHand = {
  readonly kind: "pole";
  readonly poleId: string;
  readonly eastM: number;
  readonly northM: number;
  readonly snap: PoleSnap | null;
  readonly refusal: string | null;
};

/** The end of a drop on its way from one port to another. */
export type DropHand = {
  readonly kind: "drop";
  readonly dropId: string;
  readonly eastM: number;
  readonly northM: number;
  readonly target: { readonly terminalId: string; readonly port: number } | null;
  readonly refusal: string | null;
};

/** What is being dragged: a preview of the view, an edit only once it is let go. */
export type Hand = TerminalHand | PoleHand | DropHand;

/** The row that is being dragged. */
export function handRef(hand: Hand): RefKey {
  if (hand.kind === "terminal") return refKey("terminal", hand.terminalId);
  return hand.kind === "pole" ? refKey("pole", hand.poleId) : refKey("drop", hand.dropId);
}

/** A distance being typed for a terminal, told from one of its span's poles. */
export type ExactEntry = {
  readonly terminalId: string;
  readonly spanId: string;
  readonly poleId: string;
  readonly text: string;
};

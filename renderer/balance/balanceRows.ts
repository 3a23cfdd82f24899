import type { CableTerminals } from "../../core/layout/terminalOrder.ts";

/** A line of the list of terminals: a cable's heading, or one terminal on it. */
export type BalanceRow =
  | { readonly kind: "cable"; readonly cableId: string; readonly terminalIds: readonly string[] }
  | { readonly kind: "terminal"; readonly terminalId: string };

/** The lines of the list, cable by cable from the hub. */
export function balanceRows(cables: readonly CableTerminals[]): readonly BalanceRow[] {
  return cables.flatMap(({ cableId, terminalIds }): readonly BalanceRow[] =>
    terminalIds.length === 0
      ? []
      : [
          { kind: "cable", cableId, terminalIds },
          ...terminalIds.map((terminalId) => ({ kind: "terminal" as const, terminalId })),
        ],
  );
}

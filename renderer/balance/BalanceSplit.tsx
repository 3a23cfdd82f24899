import type { ReactNode } from "react";
import { BelowSplit } from "../app/BelowSplit.tsx";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { BalancePanel } from "./BalancePanel.tsx";
import { setBalance } from "./balanceHand.ts";
import { balanceWords } from "./words.ts";

/** The diagram with the balance below it, and the divider between. */
export function BalanceSplit({ open, children }: { readonly open: OpenRoute; readonly children: ReactNode }) {
  const session = useSession();
  const isOpen = useView((state) => state.balance.isOpen);
  const sizeFrac = useView((state) => state.balance.sizeFrac);
  const isElsewhere = useView((state) => state.sheets !== null || state.isSettingsOpen);
  return (
    <BelowSplit
      className="balance"
      label={balanceWords.room}
      dividerLabel={balanceWords.divider}
      isShown={isOpen && !isElsewhere}
      sizeFrac={sizeFrac}
      size={(frac) => setBalance(session, { sizeFrac: frac })}
      panel={<BalancePanel open={open} />}
    >
      {children}
    </BelowSplit>
  );
}

import { Scale, X } from "lucide-react";
import { actionOf, perform } from "../app/actions.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { Tabs } from "../panels/Tabs.tsx";
import { BalanceFoot } from "./BalanceFoot.tsx";
import { setBalance } from "./balanceHand.ts";
import { balanceTabs } from "./balanceView.ts";
import { FiberTubes } from "./FiberTubes.tsx";
import { HubOutputs } from "./HubOutputs.tsx";
import { LightKey } from "./LightKey.tsx";
import { LightRoute } from "./LightRoute.tsx";
import { PortKey } from "./PortKey.tsx";
import { PortsGrid } from "./PortsGrid.tsx";
import { useOrder } from "./useOrder.ts";
import { balanceWords, evenWords, tabWords } from "./words.ts";

/** Ports, fibers and hub outputs of the route, side by side with what can be done to balance them. */
export function BalancePanel({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const tab = useView((state) => state.balance.tab);
  const isOrdered = useOrder(open);
  const isEvening = useView((state) => state.balance.evenBy !== null);
  return (
    <>
      <div className="balance-bar">
        <Tabs
          label={balanceWords.tabs}
          tabs={balanceTabs}
          words={tabWords}
          tab={tab}
          onTab={(next) => setBalance(session, { tab: next })}
        />
        {tab === "ports" && <PortKey />}
        <button
          type="button"
          className="act is-written"
          aria-expanded={isEvening}
          onClick={() => setBalance(session, { evenBy: isEvening ? null : "", tab: "ports", hand: null })}
        >
          <Scale size={16} strokeWidth={1.75} aria-hidden="true" />
          <span>{evenWords.ask}</span>
        </button>
        <button
          type="button"
          className="act"
          aria-label={balanceWords.hide}
          title={balanceWords.hide}
          onClick={() => void perform(session, actionOf("balance"))}
        >
          <X size={16} aria-hidden="true" />
        </button>
      </div>
      {open.route.terminal.size === 0 && <p className="empty">{balanceWords.empty}</p>}
      {!isOrdered && <p className="empty">{balanceWords.ordering}</p>}
      {isOrdered && tab === "ports" && <PortsGrid open={open} />}
      {isOrdered && tab === "ports" && <BalanceFoot open={open} />}
      {tab === "fibers" && <FiberTubes open={open} />}
      {tab === "hub" && <HubOutputs open={open} />}
      {tab === "light" && <LightKey />}
      {isOrdered && tab === "light" && <LightRoute open={open} />}
    </>
  );
}

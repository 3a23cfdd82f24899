import { Scale, X } from "lucide-react";
import type { KeyboardEvent } from "react";
import { actionOf, perform } from "../app/actions.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
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
        <Tabs />
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

function Tabs() {
  const session = useSession();
  const tab = useView((state) => state.balance.tab);
  const walk = (event: KeyboardEvent<HTMLDivElement>): void => {
    const step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    const next = balanceTabs[(balanceTabs.indexOf(tab) + step + balanceTabs.length) % balanceTabs.length];
    if (step === 0 || !next) return;
    event.preventDefault();
    setBalance(session, { tab: next });
    event.currentTarget.querySelector<HTMLElement>(`[data-tab="${next}"]`)?.focus();
  };
  return (
    <div role="tablist" className="tables-tabs" aria-label={balanceWords.tabs} onKeyDown={walk}>
      {balanceTabs.map((one) => (
        <button
          key={one}
          type="button"
          role="tab"
          data-tab={one}
          aria-selected={one === tab}
          tabIndex={one === tab ? 0 : -1}
          onClick={() => setBalance(session, { tab: one })}
        >
          {tabWords[one]}
        </button>
      ))}
    </div>
  );
}

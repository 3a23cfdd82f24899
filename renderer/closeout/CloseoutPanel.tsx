import { X } from "lucide-react";
import type { KeyboardEvent } from "react";
import { actionOf, perform } from "../app/actions.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { Board } from "./board/Board.tsx";
import { setCloseout } from "./closeoutHand.ts";
import { closeoutTabs } from "./closeoutView.ts";
import { PunchList } from "./punch/PunchList.tsx";
import { SheathPanel } from "./sheath/SheathPanel.tsx";
import { closeoutWords, tabWords } from "./words.ts";

/** How far the route has come, what is to be mended, and what the sheath's marks say. */
export function CloseoutPanel({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const tab = useView((state) => state.closeout.tab);
  const by = useView((state) => state.closeout.by);
  return (
    <>
      <div className="closeout-bar">
        <Tabs />
        <label className="closeout-by">
          {closeoutWords.by}
          <input value={by} onChange={(event) => setCloseout(session, { by: event.target.value })} />
        </label>
        <button
          type="button"
          className="act"
          aria-label={closeoutWords.hide}
          title={closeoutWords.hide}
          onClick={() => void perform(session, actionOf("closeout"))}
        >
          <X size={16} aria-hidden="true" />
        </button>
      </div>
      {tab === "board" && <Board open={open} />}
      {tab === "punch" && <PunchList open={open} />}
      {tab === "sheath" && <SheathPanel open={open} />}
    </>
  );
}

function Tabs() {
  const session = useSession();
  const tab = useView((state) => state.closeout.tab);
  const walk = (event: KeyboardEvent<HTMLDivElement>): void => {
    const step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    const next = closeoutTabs[(closeoutTabs.indexOf(tab) + step + closeoutTabs.length) % closeoutTabs.length];
    if (step === 0 || !next) return;
    event.preventDefault();
    setCloseout(session, { tab: next });
    event.currentTarget.querySelector<HTMLElement>(`[data-tab="${next}"]`)?.focus();
  };
  return (
    <div role="tablist" className="tables-tabs" aria-label={closeoutWords.tabs} onKeyDown={walk}>
      {closeoutTabs.map((one) => (
        <button
          key={one}
          type="button"
          role="tab"
          data-tab={one}
          aria-selected={one === tab}
          tabIndex={one === tab ? 0 : -1}
          onClick={() => setCloseout(session, { tab: one })}
        >
          {tabWords[one]}
        </button>
      ))}
    </div>
  );
}

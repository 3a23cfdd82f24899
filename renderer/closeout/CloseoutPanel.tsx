import { X } from "lucide-react";
import { actionOf, perform } from "../app/actions.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { Tabs } from "../panels/Tabs.tsx";
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
        <Tabs
          label={closeoutWords.tabs}
          tabs={closeoutTabs}
          words={tabWords}
          tab={tab}
          onTab={(next) => setCloseout(session, { tab: next })}
        />
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

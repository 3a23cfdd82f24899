import { Tooltip } from "radix-ui";
import { useEffect } from "react";
import { Diagram } from "../canvas/Diagram.tsx";
import { AlertStrip } from "../panels/AlertStrip.tsx";
import { ActionButton, Bar } from "../panels/Bar.tsx";
import { FindingsPanel } from "../panels/FindingsPanel.tsx";
import { ImportPanel } from "../panels/ImportPanel.tsx";
import { JobStrip } from "../panels/JobStrip.tsx";
import { SheetsPanel } from "../panels/SheetsPanel.tsx";
import { SidePanel } from "../panels/SidePanel.tsx";
import { actionOf } from "./actions.ts";
import { listenForKeys } from "./keys.ts";
import type { OpenRoute } from "./routeStore.ts";
import type { Session } from "./session.ts";
import { SessionContext, useOpenRoute, useView } from "./useSession.ts";

/** The window. */
export function App({ session }: { readonly session: Session }) {
  useEffect(() => listenForKeys(session), [session]);
  return (
    <SessionContext value={session}>
      <Tooltip.Provider delayDuration={500}>
        <div className="app">
          <Bar />
          <AlertStrip />
          <JobStrip />
          <Room />
        </div>
      </Tooltip.Provider>
    </SessionContext>
  );
}

function Room() {
  const open = useOpenRoute();
  if (!open) {
    return (
      <main className="room">
        <p className="empty">No route is open. Start the program with the name of a route file.</p>
      </main>
    );
  }
  return <OpenRoom open={open} />;
}

function OpenRoom({ open }: { readonly open: OpenRoute }) {
  const sheets = useView((state) => state.sheets);
  const isSideOpen = useView((state) => state.isSideOpen);
  const isImportOpen = useView((state) => state.isImportOpen);
  const isFindingsOpen = useView((state) => state.isFindingsOpen);
  const isEmpty = open.route.pole.size === 0 && open.route.livingUnit.size === 0;
  return (
    <main className="room">
      <div className="middle">
        <div className="stage">
          {sheets ? <SheetsPanel sheets={sheets} /> : <Diagram open={open} />}
          {isEmpty && !isImportOpen && !sheets && (
            <div className="empty">
              <p>Nothing is on this route yet. Bring in the poles first, then the living units.</p>
              <ActionButton action={actionOf("import")} />
            </div>
          )}
        </div>
        {isFindingsOpen && !sheets && <FindingsPanel open={open} />}
      </div>
      {isImportOpen ? <ImportPanel /> : isSideOpen && !sheets && <SidePanel open={open} />}
    </main>
  );
}

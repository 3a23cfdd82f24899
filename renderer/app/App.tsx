import { Tooltip } from "radix-ui";
import { useEffect } from "react";
import { BalanceSplit } from "../balance/BalanceSplit.tsx";
import { Diagram } from "../canvas/Diagram.tsx";
import { CloseoutSplit } from "../closeout/CloseoutSplit.tsx";
import { PacketsPanel } from "../closeout/packets/PacketsPanel.tsx";
import { SignOffPanel } from "../closeout/signoff/SignOffPanel.tsx";
import { PinnedExplanations } from "../explain/PinnedExplanations.tsx";
import { Worksheet } from "../explain/Worksheet.tsx";
import { Finder } from "../finder/Finder.tsx";
import { HelpPanel } from "../help/HelpPanel.tsx";
import { KeySheet } from "../keys/KeySheet.tsx";
import { LayoutPanel } from "../layout/LayoutPanel.tsx";
import { WhatIfPanel } from "../layout/WhatIfPanel.tsx";
import { Bar } from "../panels/Bar.tsx";
import { EmptyState } from "../panels/EmptyState.tsx";
import { AlertStrip } from "../panels/faults/AlertStrip.tsx";
import { FindingsBelow } from "../panels/findings/FindingsBelow.tsx";
import { HistoryPanel } from "../panels/history/HistoryPanel.tsx";
import { ImportPanel } from "../panels/import/ImportPanel.tsx";
import { JobStrip } from "../panels/JobStrip.tsx";
import { RevisionsPanel } from "../panels/revisions/RevisionsPanel.tsx";
import { SheetsPanel } from "../panels/SheetsPanel.tsx";
import { SidePanel } from "../panels/SidePanel.tsx";
import { emptyWords } from "../panels/words.ts";
import { ProfileSplit } from "../profile/ProfileSplit.tsx";
import { SettingsRoom } from "../settings/SettingsRoom.tsx";
import { CopiesPanel } from "../start/CopiesPanel.tsx";
import { Guide } from "../start/Guide.tsx";
import { RouteTabs, StandingBanner } from "../start/RouteTabs.tsx";
import { StartScreen } from "../start/StartScreen.tsx";
import { TablesSplit } from "../tables/TablesSplit.tsx";
import { TraceSplit } from "../trace/TraceSplit.tsx";
import { Divider } from "./Divider.tsx";
import { followMenu } from "./desktop.ts";
import { listenForDrops } from "./dropping.ts";
import { listenForKeys } from "./keys.ts";
import { keepLayout } from "./panelLayout.ts";
import type { OpenRoute } from "./routeStore.ts";
import type { Session } from "./session.ts";
import { SessionContext, useOpenRoute, useView } from "./useSession.ts";

/** The window. */
export function App({ session }: { readonly session: Session }) {
  useEffect(() => listenForKeys(session), [session]);
  useEffect(() => keepLayout(session), [session]);
  useEffect(() => followMenu(session), [session]);
  useEffect(() => listenForDrops(session), [session]);
  return (
    <SessionContext value={session}>
      <Tooltip.Provider delayDuration={500}>
        <div className="app">
          <Bar />
          <RouteTabs />
          <StandingBanner />
          <AlertStrip />
          <JobStrip />
          <div className="desk">
            <Room />
            <HelpPanel />
          </div>
          <Finder />
          <KeySheet />
          <Worksheet />
        </div>
      </Tooltip.Provider>
    </SessionContext>
  );
}

function Room() {
  const open = useOpenRoute();
  const isStartOpen = useView((state) => state.isStartOpen);
  if (!open || isStartOpen) {
    return (
      <main className="room">
        <StartScreen />
      </main>
    );
  }
  return <OpenRoom open={open} />;
}

/** What stands at the side: one panel at a time. */
function BesideRoom({ open }: { readonly open: OpenRoute }) {
  const room = useView((state) => state.sideRoom);
  switch (room) {
    case "signOff":
      return <SignOffPanel key={open.routeId} open={open} />;
    case "packets":
      return <PacketsPanel key={open.routeId} open={open} />;
    case "revisions":
      return <RevisionsPanel key={open.routeId} open={open} />;
    case "layout":
      return <LayoutPanel open={open} />;
    case "history":
      return <HistoryPanel open={open} />;
    case null:
      return <SidePanel open={open} />;
  }
}

function OpenRoom({ open }: { readonly open: OpenRoute }) {
  const sheets = useView((state) => state.sheets);
  const isSettingsOpen = useView((state) => state.isSettingsOpen);
  const isSideOpen = useView((state) => state.isSideOpen);
  const isImportOpen = useView((state) => state.isImportOpen);
  const isFindingsOpen = useView((state) => state.isFindingsOpen);
  const isBesideSheets = useView((state) => state.sideRoom === "revisions");
  const isWhatIfOpen = useView((state) => state.isWhatIfOpen);
  const areCopiesOpen = useView((state) => state.areCopiesOpen);
  const isAdding = useView((state) => state.adding !== null);
  const isEmpty = open.route.pole.size === 0 && open.route.livingUnit.size === 0;
  return (
    <main className="room">
      <div className="middle">
        <TablesSplit open={open}>
          <CloseoutSplit open={open}>
            <BalanceSplit open={open}>
              <TraceSplit open={open}>
                <ProfileSplit open={open}>
                  <div className="stage">
                    {isSettingsOpen && <SettingsRoom open={open} />}
                    {!isSettingsOpen &&
                      (sheets ? <SheetsPanel open={open} sheets={sheets} /> : <Diagram open={open} />)}
                    <Guide />
                    <PinnedExplanations />
                    {isEmpty && !isImportOpen && !sheets && !isAdding && (
                      <EmptyState says={emptyWords.diagram} actionIds={["import", "addPole"]} />
                    )}
                  </div>
                </ProfileSplit>
              </TraceSplit>
            </BalanceSplit>
          </CloseoutSplit>
        </TablesSplit>
        {isFindingsOpen && !sheets && !isSettingsOpen && <FindingsBelow open={open} />}
      </div>
      {isImportOpen && <ImportPanel />}
      {areCopiesOpen && !isImportOpen && <CopiesPanel open={open} />}
      {isWhatIfOpen && !isImportOpen && !areCopiesOpen && !sheets && !isSettingsOpen && (
        <WhatIfPanel key={open.routeId} open={open} />
      )}
      {!isImportOpen &&
        !areCopiesOpen &&
        !isWhatIfOpen &&
        isSideOpen &&
        (!sheets || isBesideSheets) &&
        !isSettingsOpen && (
          <>
            <Divider edge="side" />
            <BesideRoom open={open} />
          </>
        )}
    </main>
  );
}

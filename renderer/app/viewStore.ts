import { createStore, type StoreApi } from "zustand/vanilla";
import type { Reply } from "../../core/contract/contract.ts";
import type { FigureRef } from "../../core/explain/explanation.ts";
import type { Fault } from "../../core/model/result.ts";
import type { Route } from "../../core/model/route.ts";
import type { Severity } from "../../core/rules/rule.ts";
import type { PaperName } from "../../core/sheets/paper/paper.ts";
import { type BalanceView, plainBalance } from "../balance/balanceView.ts";
import type { ShownLight } from "../balance/useReckonedLight.ts";
import type { DrawnAs } from "../canvas/places.ts";
import { fullScalePxPerM, type Viewport } from "../canvas/viewport.ts";
import { type CloseoutView, plainCloseout } from "../closeout/closeoutView.ts";
import type { Brought } from "../closeout/packets/takePackets.ts";
import type { ShownTrial } from "../layout/shownTrial.ts";
import { type ProfileView, plainProfile } from "../profile/profileView.ts";
import { plainTables, type TablesView } from "../tables/tableHand.ts";
import type { AddingState } from "../tools/adding/addingState.ts";
import type { Arranging } from "../tools/arrange/arranging.ts";
import type { ExactEntry, Hand } from "../tools/hand.ts";
import { type KindStates, usualKinds } from "../tools/kinds.ts";
import type { MeasurePoint } from "../tools/measure.ts";
import type { Nudging } from "../tools/nudge.ts";
import { plainTraces, type TraceView } from "../trace/traceView.ts";
import type { Repeatable } from "./actions/action.ts";
import { blankFileView, type FileView } from "./fileStore.ts";
import { plainPanels } from "./plainLayout.ts";
import type { RefKey } from "./ref.ts";
import type { SideRoom } from "./sideRoom.ts";

/** Long work the host does for this window. */
type Job = {
  readonly jobId: string;
  /** What it is, as the button says it. */
  readonly name: string;
  readonly doneCount: number;
  readonly totalCount: number;
  readonly words: string;
  readonly isCancelling: boolean;
  /** True where edits wait until it is over; what only draws has its own copy of the route. */
  readonly holdsEdits: boolean;
  /** What stopping it does, as the button says it. */
  readonly stop: string;
};

export type PreviewSheet = Reply<"draw.sheets">["sheets"][number];

/** What sheets on preview were drawn from. */
export type SheetsOf = {
  /** What the host keeps them under. */
  readonly drawnId: string;
  /** The route as it stood then. */
  readonly route: Route;
  /** What the title blocks say of the revision. */
  readonly revision: string;
  /** The revision shown as it was issued; null where it is the route as it stood. */
  readonly revisionId: string | null;
  /** What they were drawn on instead of the company's paper; null where on that. */
  readonly paper: PaperName | null;
  /** False where some sheets were asked for alone. */
  readonly isWhole: boolean;
};

/** What the eye and hand are at; never part of the route, never in its history. */
export type ViewState = FileView & {
  readonly viewport: Viewport;
  /** Chosen rows, the last chosen at the end. */
  readonly selection: readonly RefKey[];
  readonly hover: RefKey | null;
  readonly isSideOpen: boolean;
  readonly isFindingsOpen: boolean;
  readonly isImportOpen: boolean;
  /** Sheets on preview; null shows the diagram. */
  readonly sheets: readonly PreviewSheet[] | null;
  /** What the sheets on preview were drawn from; null before any were. */
  readonly sheetsOf: SheetsOf | null;
  readonly isSettingsOpen: boolean;
  readonly sideWidthPx: number;
  readonly findingsHeightPx: number;
  readonly severitiesShown: readonly Severity[];
  readonly areWaivedShown: boolean;
  /** What stands at the side in place of what is chosen; null for what is chosen. */
  readonly sideRoom: SideRoom | null;
  /** What came of the packets brought back since the window was opened, newest first. */
  readonly packetsBrought: readonly Brought[];
  readonly isWhatIfOpen: boolean;
  /** A trial layout beside the present one on the diagram; null while none is shown. */
  readonly trial: ShownTrial | null;
  /** Seconds a layout may search; null counts steps instead. */
  readonly layoutTimeS: number | null;
  /** Figures whose explanations stay open. */
  readonly pinned: readonly FigureRef[];
  /** Figure that is worked out on a sheet of its own; null for none. */
  readonly worksheet: FigureRef | null;
  readonly fault: Fault | null;
  /** The latest message for eyes and ears alike; `saidCount` tells two equal ones apart. */
  readonly said: string;
  readonly saidCount: number;
  readonly job: Job | null;
  /** What lies over the window. */
  readonly overlay: "finder" | "keys" | null;
  /** Page of the help that is shown; null while it is put away. */
  readonly helpPage: string | null;
  readonly helpSought: string;
  /** Number of the sheet the preview is to turn to; null once it has. */
  readonly sheetWanted: string | null;
  /** True while an edit is under way: the next waits for its answer. */
  readonly isBusy: boolean;
  /** What is being dragged, as it would hang or stand if it were let go now. */
  readonly hand: Hand | null;
  readonly exact: ExactEntry | null;
  /** Row whose name is a field on the diagram now. */
  readonly inPlace: RefKey | null;
  readonly nudging: Nudging | null;
  /** How what is chosen is being arranged; null while it is not. */
  readonly arranging: Arranging | null;
  /** What was asked for the last time something was arranged. */
  readonly arranged: Arranging | null;
  /** What can be done again to what is chosen then. */
  readonly lastDone: Repeatable | null;
  /** What a removal took, with a way back. */
  readonly toast: string | null;
  readonly kinds: KindStates;
  readonly isKindsOpen: boolean;
  /** Points of the measure tool; null while it is put away. */
  readonly measure: readonly MeasurePoint[] | null;
  readonly tables: TablesView;
  readonly profile: ProfileView;
  readonly balance: BalanceView;
  readonly closeout: CloseoutView;
  readonly traces: TraceView;
  /** Light of the route over the diagram; null while it is not shown. */
  readonly light: ShownLight | null;
  readonly drawnAs: DrawnAs;
  /** The tool in hand for adding by hand; null while one only chooses. */
  readonly adding: AddingState | null;
};

export type ViewStore = StoreApi<ViewState>;

/** A view of nothing yet: panels open, all severities shown. */
export function openViewStore(): ViewStore {
  return createStore<ViewState>(() => ({
    ...blankFileView,
    viewport: { centreEastM: 0, centreNorthM: 0, pxPerM: fullScalePxPerM, widthPx: 0, heightPx: 0 },
    selection: [],
    hover: null,
    isImportOpen: false,
    sheets: null,
    sheetsOf: null,
    isSettingsOpen: false,
    ...plainPanels,
    severitiesShown: ["error", "warning", "note"],
    areWaivedShown: true,
    sideRoom: null,
    packetsBrought: [],
    isWhatIfOpen: false,
    trial: null,
    layoutTimeS: null,
    pinned: [],
    worksheet: null,
    fault: null,
    said: "",
    saidCount: 0,
    job: null,
    overlay: null,
    helpPage: null,
    helpSought: "",
    sheetWanted: null,
    isBusy: false,
    hand: null,
    exact: null,
    inPlace: null,
    nudging: null,
    arranging: null,
    arranged: null,
    lastDone: null,
    toast: null,
    kinds: usualKinds,
    isKindsOpen: false,
    measure: null,
    tables: plainTables,
    profile: plainProfile,
    balance: plainBalance,
    closeout: plainCloseout,
    traces: plainTraces,
    light: null,
    drawnAs: "ground",
    adding: null,
  }));
}

/** Whether an edit has to wait: for the one under way, or for work that would be wrong after it. */
export function areEditsHeld({ isBusy, job }: ViewState): boolean {
  return isBusy || (job?.holdsEdits ?? false);
}

/** Tells a person something once, on screen and to a screen reader. */
export function say(view: ViewStore, words: string): void {
  view.setState((state) => ({ said: words, saidCount: state.saidCount + 1 }));
}

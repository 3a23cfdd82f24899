import { createStore, type StoreApi } from "zustand/vanilla";
import type { Fault } from "../../core/model/result.ts";
import type { Severity } from "../../core/rules/rule.ts";
import { fullScalePxPerM, type Viewport } from "../canvas/viewport.ts";
import type { RefKey } from "./ref.ts";

/** Long work the host does for this window. */
type Job = {
  readonly jobId: string;
  /** What it is, as the button says it. */
  readonly name: string;
  readonly doneCount: number;
  readonly totalCount: number;
  readonly words: string;
  readonly isCancelling: boolean;
};

export type PreviewSheet = { readonly number: string; readonly title: string; readonly svg: string };

/** What the eye and hand are at; never part of the route, never in its history. */
export type ViewState = {
  readonly viewport: Viewport;
  /** Chosen rows, the last chosen at the end. */
  readonly selection: readonly RefKey[];
  readonly hover: RefKey | null;
  readonly isSideOpen: boolean;
  readonly isFindingsOpen: boolean;
  readonly isImportOpen: boolean;
  /** Sheets on preview; null shows the diagram. */
  readonly sheets: readonly PreviewSheet[] | null;
  readonly severitiesShown: readonly Severity[];
  readonly areWaivedShown: boolean;
  readonly fault: Fault | null;
  /** The latest message for eyes and ears alike; `saidCount` tells two equal ones apart. */
  readonly said: string;
  readonly saidCount: number;
  readonly job: Job | null;
  /** True while an edit is under way: the next waits for its answer. */
  readonly isBusy: boolean;
};

export type ViewStore = StoreApi<ViewState>;

/** A view of nothing yet: panels open, all severities shown. */
export function openViewStore(): ViewStore {
  return createStore<ViewState>(() => ({
    viewport: { centreEastM: 0, centreNorthM: 0, pxPerM: fullScalePxPerM, widthPx: 0, heightPx: 0 },
    selection: [],
    hover: null,
    isSideOpen: true,
    isFindingsOpen: true,
    isImportOpen: false,
    sheets: null,
    severitiesShown: ["error", "warning", "note"],
    areWaivedShown: true,
    fault: null,
    said: "",
    saidCount: 0,
    job: null,
    isBusy: false,
  }));
}

/** Tells a person something once, on screen and to a screen reader. */
export function say(view: ViewStore, words: string): void {
  view.setState((state) => ({ said: words, saidCount: state.saidCount + 1 }));
}

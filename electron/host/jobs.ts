import type { PacketSheet } from "../../core/closeout/packet/packetFile.ts";
import type { Reply } from "../../core/contract/contract.ts";
import { layoutFigures } from "../../core/layout/layoutFigures.ts";
import { routeWith } from "../../core/layout/rowSet.ts";
import { type Layout, runLayout } from "../../core/layout/runLayout.ts";
import { ok, type Result } from "../../core/model/result.ts";
import type { Route } from "../../core/model/route.ts";
import type { Row } from "../../core/model/tables.ts";
import type { LimitedWatch } from "../../core/placement/limitedWatch.ts";
import type { LayoutFigures } from "../../core/plant/layoutCompare.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { composeSet } from "../../core/sheets/composeSet.ts";
import type { DrawingSet } from "../../core/sheets/displayList.ts";
import { packetSheet } from "../../core/sheets/packet/packetSheet.ts";
import type { Revised } from "../../core/sheets/revised/revised.ts";
import { standingOf } from "../../core/sheets/revised/standing.ts";
import { writeSvg } from "../../core/sheets/writeSvg.ts";
import { type DrawnState, routeBefore, type SetWanted } from "./drawnState.ts";
import { pictureOpener } from "./keptPhotos.ts";
import { type LimitWishes, placementWatch } from "./placementWatch.ts";
import { type SheetFile, type SheetFormat, sheetFiles } from "./sheetFiles.ts";
import { writePdf } from "./writePdf.ts";

/** How far a job is: steps done of steps known, and what it is doing. */
export type Progress = { readonly doneCount: number; readonly totalCount: number; readonly words: string };

/** A layout under other standards beside the present one. */
export type Trial = { readonly present: LayoutFigures; readonly other: LayoutFigures; readonly layout: Layout };

/** Heavy work by name: what it takes and what it gives. */
type Jobs = {
  readonly layout: {
    readonly takes: { readonly route: Route; readonly limits: LimitWishes };
    readonly gives: Result<Layout>;
  };
  readonly trial: {
    readonly takes: {
      readonly route: Route;
      /** The route with other standards and prices, not laid out by them yet. */
      readonly other: Route;
      readonly modelIds: readonly string[] | null;
      readonly limits: LimitWishes;
    };
    readonly gives: Result<Trial>;
  };
  readonly svg: { readonly takes: SetWanted; readonly gives: Reply<"draw.sheets"> };
  readonly pdf: {
    readonly takes: SetWanted;
    readonly gives: { readonly pdf: Uint8Array; readonly sheetCount: number };
  };
  /** What a packet's page shows. */
  readonly packet: {
    readonly takes: {
      readonly state: DrawnState;
      readonly packet: Row<"packet">;
      readonly by: string;
      readonly atIso: string;
      readonly wavelengthsNm: readonly number[];
    };
    readonly gives: PacketSheet;
  };
  /** A file for each sheet. */
  readonly files: {
    readonly takes: SetWanted & { readonly format: SheetFormat };
    readonly gives: readonly SheetFile[];
  };
};
export type JobName = keyof Jobs;

/** Jobs that, when they are stopped, end with the best they have. */
export const keepsItsBest: readonly JobName[] = ["layout", "trial"];

/** Does one job to its end; where it runs, here or in a worker thread, is the caller's choice. */
export type RunJob = <N extends JobName>(
  name: N,
  takes: Jobs[N]["takes"],
  onProgress: (progress: Progress) => void,
  signal: AbortSignal,
) => Promise<Jobs[N]["gives"]>;

/** A job with a way to ask whether it has been stopped, for work that never lets go of its thread. */
type Job<N extends JobName> = (
  takes: Jobs[N]["takes"],
  onProgress: (progress: Progress) => void,
  stop: { readonly signal: AbortSignal; readonly isStopped: () => boolean },
) => Promise<Jobs[N]["gives"]>;

const jobs: { readonly [N in JobName]: Job<N> } = {
  async layout({ route, limits }, onProgress, { isStopped }) {
    return searchedLayout(route, {}, placementWatch(limits, isStopped, onProgress), onProgress);
  },
  async trial({ route, other, modelIds, limits }, onProgress, { isStopped }) {
    const models = modelIds === null ? {} : { modelIds };
    const laid = searchedLayout(other, models, placementWatch(limits, isStopped, onProgress), onProgress);
    if (!laid.ok) return laid;
    return ok({
      present: layoutFigures(openPlant(route)),
      other: layoutFigures(openPlant(routeWith(other, laid.value.rows))),
      layout: laid.value,
    });
  },
  async svg(wanted, onProgress) {
    const revised = revisedOf(wanted);
    const { sheets, layerNames } = await composedSet(wanted, revised, onProgress);
    return {
      revision: standingOf(openPlant(wanted.route), revised, false).text,
      sheets: sheets.map(({ marks, names: _names, ...sheet }) => ({
        ...sheet,
        svg: writeSvg({ ...sheet, marks }, layerNames),
      })),
    };
  },
  async pdf(wanted, onProgress, { signal }) {
    const set = await composedSet(wanted, revisedOf(wanted), onProgress);
    const pdf = await writePdf(set, {
      signal,
      onSheet: (doneCount) => onProgress({ doneCount, totalCount: set.sheets.length, words: "Writing sheets" }),
    });
    return { pdf, sheetCount: set.sheets.length };
  },
  async packet({ state, packet, ...written }) {
    const plant = openPlant(state.route);
    return packetSheet(plant, packet, { ...written, revision: standingOf(plant, revisedOf(state), false).text });
  },
  async files({ format, ...wanted }, onProgress, { signal }) {
    const set = await composedSet(wanted, revisedOf(wanted), onProgress);
    return sheetFiles(set, format, {
      signal,
      onSheet: (doneCount) => onProgress({ doneCount, totalCount: set.sheets.length, words: "Writing sheets" }),
    });
  },
};

/** The drawing set of a state of the route, or some of its sheets, with what changed since the revision before it. */
async function composedSet(
  { route, findings, only, paper, logo, kinds, photos = new Map() }: SetWanted,
  revised: Revised,
  onProgress: (progress: Progress) => void,
): Promise<DrawingSet> {
  const onSheet = (doneCount: number, totalCount: number): void =>
    onProgress({ doneCount, totalCount, words: "Composing sheets" });
  return composeSet(openPlant(route), findings, {
    revised,
    only,
    logo,
    pictureOf: await pictureOpener(photos),
    onSheet,
    ...(paper === null ? {} : { paper }),
    ...(kinds ? { kinds } : {}),
  });
}

function revisedOf({ route, revisionId, since, isAsBuilt = false }: DrawnState): Revised {
  return { revisionId, isAsBuilt, since: since && { ...since, before: openPlant(routeBefore(route, since.rows)) } };
}

/** The cheapest layout found under a watch. */
function searchedLayout(
  route: Route,
  models: { readonly modelIds?: readonly string[] },
  search: LimitedWatch,
  onProgress: (progress: Progress) => void,
): Result<Layout> {
  onProgress({ doneCount: 0, totalCount: 1, words: "placing terminals" });
  const searched = runLayout(route, { search, ...models });
  // A line is strung with cables that carry what the quick layout asks: a cheaper one that asks more fibers is no gain.
  const lacksFibers = searched.ok && searched.value.unserved.some((one) => one.kind === "fibers");
  return lacksFibers ? runLayout(route, models) : searched;
}

/** Does a job in this thread. */
export const runJobHere: RunJob = (name, takes, onProgress, signal) =>
  runJob(name, takes, onProgress, { signal, isStopped: () => signal.aborted });

/** Does a job in this thread, told to stop by another. */
export function runJob<N extends JobName>(name: N, ...rest: Parameters<Job<N>>): ReturnType<Job<N>> {
  const job: Job<N> = jobs[name];
  return job(...rest);
}

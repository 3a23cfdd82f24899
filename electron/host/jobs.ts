import type { PacketSheet } from "../../core/closeout/packet/packetFile.ts";
import { layoutFigures } from "../../core/layout/layoutFigures.ts";
import { routeWith } from "../../core/layout/rowSet.ts";
import { type Layout, runLayout } from "../../core/layout/runLayout.ts";
import { ok, type Result } from "../../core/model/result.ts";
import type { Route } from "../../core/model/route.ts";
import type { Row } from "../../core/model/tables.ts";
import type { LimitedWatch } from "../../core/placement/limitedWatch.ts";
import type { LayoutFigures } from "../../core/plant/layoutCompare.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { packetSheet } from "../../core/sheets/packet/packetSheet.ts";
import { writeSvg } from "../../core/sheets/paper/writeSvg.ts";
import { standingOf } from "../../core/sheets/revised/standing.ts";
import { type Bundle, bundled } from "./bundled.ts";
import { composedSet, revisedOf } from "./composedSet.ts";
import { drawingProgress, type Progress } from "./drawingProgress.ts";
import type { DrawnSheets } from "./drawnSheets.ts";
import type { DrawnState, SetWanted } from "./drawnState.ts";
import { type LimitWishes, placementWatch } from "./placementWatch.ts";
import { type SheetFile, type SheetFormat, sheetFiles } from "./sheetFiles.ts";
import { writePdf } from "./writePdf.ts";
import { type NamedBytes, zipped } from "./zipped.ts";

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
  readonly svg: { readonly takes: SetWanted; readonly gives: DrawnSheets };
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
    };
    readonly gives: PacketSheet;
  };
  /** Files packed into one. */
  readonly archive: {
    readonly takes: { readonly files: readonly NamedBytes[] };
    readonly gives: Uint8Array;
  };
  /** Sheets as PNG: one as a picture, several as an archive of them. */
  readonly pictures: {
    readonly takes: SetWanted & { readonly name: string };
    readonly gives: Bundle;
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
    const told = drawingProgress(onProgress);
    const { sheets, layerNames } = await composedSet(wanted, revised, told);
    const text = new TextEncoder();
    return {
      revision: standingOf(openPlant(wanted.route), revised, false).text,
      sheets: sheets.map(({ marks, names: _names, ...sheet }, index) => {
        const svg = text.encode(writeSvg({ ...sheet, marks }, layerNames));
        told.onWritten(index + 1, sheets.length);
        return { ...sheet, svg };
      }),
    };
  },
  async pdf(wanted, onProgress, { signal }) {
    const told = drawingProgress(onProgress);
    const set = await composedSet(wanted, revisedOf(wanted), told);
    const sheetCount = set.sheets.length;
    const pdf = await writePdf(set, { signal, onSheet: (doneCount) => told.onWritten(doneCount, sheetCount) });
    return { pdf, sheetCount };
  },
  async packet({ state, packet, ...written }) {
    const plant = openPlant(state.route);
    return packetSheet(plant, packet, { ...written, revision: standingOf(plant, revisedOf(state), false).text });
  },
  files: ({ format, ...wanted }, onProgress, { signal }) => filesOf(wanted, format, onProgress, signal),
  async pictures({ name, ...wanted }, onProgress, { signal }) {
    return bundled(name, await filesOf(wanted, "png", onProgress, signal));
  },
  async archive({ files }) {
    return zipped(files, { isPacked: false });
  },
};

/** A file for each sheet of a set. */
async function filesOf(
  wanted: SetWanted,
  format: SheetFormat,
  onProgress: (progress: Progress) => void,
  signal: AbortSignal,
): Promise<readonly SheetFile[]> {
  const told = drawingProgress(onProgress);
  const set = await composedSet(wanted, revisedOf(wanted), told);
  return sheetFiles(set, format, { signal, onSheet: (doneCount) => told.onWritten(doneCount, set.sheets.length) });
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

/** What of a result goes over to another thread as it is: a preview of a thousand sheets takes a second to copy. */
const handsOver: { readonly [N in JobName]?: (gives: Jobs[N]["gives"]) => readonly Uint8Array<ArrayBuffer>[] } = {
  svg: ({ sheets }) => sheets.map((one) => one.svg),
};

/** The memory of a result that its thread gives away. */
export function handedOver<N extends JobName>(name: N, gives: Jobs[N]["gives"]): ArrayBuffer[] {
  return handsOver[name]?.(gives).map((bytes) => bytes.buffer) ?? [];
}

/** Does a job in this thread. */
export const runJobHere: RunJob = (name, takes, onProgress, signal) =>
  runJob(name, takes, onProgress, { signal, isStopped: () => signal.aborted });

/** Does a job in this thread, told to stop by another. */
export function runJob<N extends JobName>(name: N, ...rest: Parameters<Job<N>>): ReturnType<Job<N>> {
  const job: Job<N> = jobs[name];
  return job(...rest);
}

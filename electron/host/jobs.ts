import type { Reply } from "../../core/contract/contract.ts";
import { type Layout, runLayout } from "../../core/layout/runLayout.ts";
import type { Result } from "../../core/model/result.ts";
import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import type { Finding } from "../../core/rules/finding.ts";
import { composeSet } from "../../core/sheets/composeSet.ts";
import type { DrawingSet } from "../../core/sheets/displayList.ts";
import { writeSvg } from "../../core/sheets/writeSvg.ts";
import { placementWatch } from "./placementWatch.ts";
import { writePdf } from "./writePdf.ts";

/** How far a job is: steps done of steps known, and what it is doing. */
export type Progress = { readonly doneCount: number; readonly totalCount: number; readonly words: string };

/** Heavy work by name: what it takes and what it gives. */
type Jobs = {
  readonly layout: { readonly takes: { readonly route: Route }; readonly gives: Result<Layout> };
  readonly svg: { readonly takes: DrawInput; readonly gives: Reply<"draw.sheets"> };
  readonly pdf: {
    readonly takes: DrawInput & { readonly only: readonly string[] | null };
    readonly gives: { readonly pdf: Uint8Array; readonly sheetCount: number };
  };
};
export type JobName = keyof Jobs;
type DrawInput = { readonly route: Route; readonly findings: readonly Finding[] };

/** Does one job to its end; where it runs, here or in a worker thread, is the caller's choice. */
export type RunJob = <N extends JobName>(
  name: N,
  takes: Jobs[N]["takes"],
  onProgress: (progress: Progress) => void,
  signal: AbortSignal,
) => Promise<Jobs[N]["gives"]>;

type JobTable = {
  readonly [N in JobName]: (
    takes: Jobs[N]["takes"],
    onProgress: (progress: Progress) => void,
    signal: AbortSignal,
  ) => Promise<Jobs[N]["gives"]>;
};

const jobs: JobTable = {
  async layout({ route }, onProgress) {
    onProgress({ doneCount: 0, totalCount: 1, words: "Placing terminals" });
    const searched = runLayout(route, { search: { watch: placementWatch(onProgress), isQuick: false } });
    // A line is strung with cables that carry what the quick layout asks: a cheaper one that asks more fibers is no gain.
    const lacksFibers = searched.ok && searched.value.unserved.some((one) => one.kind === "fibers");
    return lacksFibers ? runLayout(route) : searched;
  },
  async svg({ route, findings }, onProgress) {
    onProgress({ doneCount: 0, totalCount: 1, words: "Composing sheets" });
    const { sheets } = composeSet(openPlant(route), findings);
    const latest = [...route.revision.values()].sort((a, b) => (a.dateIso < b.dateIso ? -1 : 1)).at(-1);
    return {
      revision: latest?.letter ?? "",
      sheets: sheets.map(({ marks, ...sheet }) => ({ ...sheet, svg: writeSvg({ ...sheet, marks }) })),
    };
  },
  async pdf({ route, findings, only }, onProgress, signal) {
    const whole = composeSet(openPlant(route), findings);
    const set = only === null ? whole : partOf(whole, only);
    const pdf = await writePdf(set, {
      signal,
      onSheet: (doneCount) => onProgress({ doneCount, totalCount: set.sheets.length, words: "Writing sheets" }),
    });
    return { pdf, sheetCount: set.sheets.length };
  },
};

/** Some sheets of a set, as they stand in it: numbers stay, and links lead only to sheets that are there. */
function partOf(set: DrawingSet, numbers: readonly string[]): DrawingSet {
  const sheets = set.sheets
    .filter((one) => numbers.includes(one.number))
    .map((one) => ({ ...one, links: one.links.filter((link) => numbers.includes(link.to)) }));
  return { ...set, sheets };
}

/** Does a job in this thread. */
export const runJobHere: RunJob = (name, takes, onProgress, signal) => jobs[name](takes, onProgress, signal);

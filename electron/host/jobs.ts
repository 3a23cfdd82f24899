import { type Layout, runLayout } from "../../core/layout/runLayout.ts";
import type { Result } from "../../core/model/result.ts";
import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import type { Finding } from "../../core/rules/finding.ts";
import { composeSet } from "../../core/sheets/composeSet.ts";
import { writeSvg } from "../../core/sheets/writeSvg.ts";
import { writePdf } from "./writePdf.ts";

/** How far a job is: steps done of steps known, and what it is doing. */
export type Progress = { readonly doneCount: number; readonly totalCount: number; readonly words: string };

/** Heavy work by name: what it takes and what it gives. */
type Jobs = {
  readonly layout: { readonly takes: { readonly route: Route }; readonly gives: Result<Layout> };
  readonly svg: { readonly takes: DrawInput; readonly gives: readonly SheetPicture[] };
  readonly pdf: {
    readonly takes: DrawInput;
    readonly gives: { readonly pdf: Uint8Array; readonly sheetCount: number };
  };
};
export type JobName = keyof Jobs;
/** A sheet as the preview shows it. */
type SheetPicture = { readonly number: string; readonly title: string; readonly svg: string };
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
    return runLayout(route);
  },
  async svg({ route, findings }, onProgress) {
    onProgress({ doneCount: 0, totalCount: 1, words: "Composing sheets" });
    const { sheets } = composeSet(openPlant(route), findings);
    return sheets.map((sheet) => ({ number: sheet.number, title: sheet.title, svg: writeSvg(sheet) }));
  },
  async pdf({ route, findings }, onProgress, signal) {
    const set = composeSet(openPlant(route), findings);
    const pdf = await writePdf(set, {
      signal,
      onSheet: (doneCount) => onProgress({ doneCount, totalCount: set.sheets.length, words: "Writing sheets" }),
    });
    return { pdf, sheetCount: set.sheets.length };
  },
};

/** Does a job in this thread. */
export const runJobHere: RunJob = (name, takes, onProgress, signal) => jobs[name](takes, onProgress, signal);

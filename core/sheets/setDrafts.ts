import { cablesInOrder } from "../plant/cableOrder.ts";
import { terminalsAlong } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import { polesAlong, type SpanRun, spanRuns } from "../plant/spanRuns.ts";
import type { Finding } from "../rules/finding.ts";
import type { PictureOf } from "./asBuilt/photoSheet.ts";
import { reportDrafts } from "./asBuilt/reportSheet.ts";
import { undrawnReadings } from "./asBuilt/undrawnReadings.ts";
import type { Draft, NumberedFinding, SheetKind } from "./book.ts";
import { coverDrafts } from "./coverSheet.ts";
import { terminalDrafts } from "./jobCard/terminalSheet.ts";
import { notesDrafts } from "./notesSheet.ts";
import type { Paper } from "./paper/paper.ts";
import { byNearestStrip } from "./plan/byNearestStrip.ts";
import { bondedPoles } from "./plan/planBonds.ts";
import { planRows } from "./plan/planRows.ts";
import { planDraft, type StripContext, stripBoxOf } from "./plan/planSheet.ts";
import { type Strip, strips } from "./plan/strips.ts";
import { rowPapers } from "./profile/profilePaper.ts";
import { type ProfileRow, profileRows } from "./profile/profileRows.ts";
import { profileDrafts } from "./profile/profileSheet.ts";
import { changeGroups } from "./revised/changeLines.ts";
import { placedChanges } from "./revised/changePlaces.ts";
import type { Revised } from "./revised/revised.ts";
import { revisionDrafts } from "./revised/revisionSheet.ts";
import type { ChangeLine } from "./revised/told.ts";
import { billDrafts } from "./schedule/billSheet.ts";
import { bondingDrafts } from "./schedule/bondingSheet.ts";
import { closeoutDrafts } from "./schedule/closeoutSheet.ts";
import { costDrafts } from "./schedule/costSheet.ts";
import { findingDrafts } from "./schedule/findingsSheet.ts";
import { guyDrafts } from "./schedule/guySheet.ts";
import { permitDrafts } from "./schedule/permitSheet.ts";
import { reelDrafts } from "./schedule/reelSheet.ts";
import { scheduleDrafts } from "./schedule/scheduleSheet.ts";
import { stringingDrafts } from "./schedule/stringingSheet.ts";
import { fiberDrafts } from "./splice/fiberChart.ts";
import { spliceDrafts } from "./splice/spliceSheet.ts";

/** Told before the drafts of a kind are made which of how many it is, from 1. */
export type OnKind = (kind: SheetKind, number: number, count: number) => void;

/** The sheets of a set in the order they are bound, each waiting for its number; only of the kinds asked for. */
export function setDrafts(
  plant: Plant,
  paper: Paper,
  findings: readonly Finding[],
  openFindings: readonly NumberedFinding[],
  kinds: readonly SheetKind[],
  {
    revised,
    cloudLetter,
    pictureOf,
    onKind,
  }: {
    readonly revised: Revised;
    readonly cloudLetter: string;
    readonly pictureOf: PictureOf;
    readonly onKind: OnKind;
  },
): readonly Draft[] {
  const designed = revised.isAsBuilt ? (revised.since?.before ?? null) : null;
  const runs = spanRuns(plant);
  const steps = runs.flatMap((run) => run.steps);
  const cut = strips(plant, runs, stripBoxOf(paper));
  const changed = stripsChanged(plant, cut, revised);
  const profiles = kinds.includes("profile") ? cutProfiles(plant, paper, runs, cut, designed !== null) : null;
  const composers: readonly (readonly [SheetKind, () => readonly Draft[]])[] = [
    ["cover", () => coverDrafts(plant, paper, cut, designed !== null)],
    ["revision", () => revisionDrafts(plant, paper, changed)],
    ["notes", () => notesDrafts(plant, paper)],
    [
      "plan",
      () =>
        planDrafts(plant, paper, cut, openFindings, profiles?.rows ?? [], {
          changed: changed.byStrip,
          cloudLetter,
          designed,
        }),
    ],
    [
      "profile",
      () => {
        const seen = { before: revised.since?.before ?? null, lines: changed.lines, cloudLetter, designed };
        return profiles ? profileDrafts(plant, profiles.rows, profiles.paper, seen) : [];
      },
    ],
    ["stringing", () => stringingDrafts(plant, paper, steps)],
    ["guy", () => guyDrafts(plant, paper, polesAlong(steps))],
    ["permit", () => permitDrafts(plant, paper, polesAlong(steps), designed)],
    ["bonding", () => bondingDrafts(plant, paper, steps, designed !== null)],
    ["terminal", () => terminalDrafts(plant, paper, terminalOrder(plant), designed)],
    ["splice", () => spliceDrafts(plant, paper)],
    ["fiber", () => fiberDrafts(plant, paper)],
    ["reel", () => reelDrafts(plant, paper, designed)],
    ["schedule", () => scheduleDrafts(plant, paper, terminalOrder(plant), designed)],
    ["bill", () => billDrafts(plant, paper, designed)],
    ["cost", () => costDrafts(plant, paper)],
    ["findings", () => findingDrafts(plant, paper, findings, openFindings)],
    ["closeout", () => closeoutDrafts(plant, paper, { steps, terminalIds: terminalOrder(plant) })],
    ["report", () => reportDrafts(plant, paper, findings, pictureOf)],
  ];
  return composers
    .filter(([kind]) => kinds.includes(kind))
    .flatMap(([kind, compose], index, wanted) => {
      onKind(kind, index + 1, wanted.length);
      return compose();
    });
}

function planDrafts(
  plant: Plant,
  paper: Paper,
  cut: readonly Strip[],
  openFindings: readonly NumberedFinding[],
  profiles: readonly ProfileRow[],
  clouds: Pick<StripContext, "changed" | "cloudLetter" | "designed">,
): readonly Draft[] {
  const stripOfSpan = new Map(
    cut.flatMap((strip) => strip.steps.map((step) => [step.spanId, strip.key] as const)).reverse(),
  );
  const profileOfSpan = new Map(
    profiles.flatMap((row) => row.steps.map((step) => [step.span.spanId, row.key] as const)),
  );
  const bonded = bondedPoles(plant);
  const byStrip = byNearestStrip(plant, cut, openFindings, (one) => one.finding.at);
  return planRows(cut, stripBoxOf(paper)).map((rows) =>
    planDraft(plant, paper, rows, { byStrip, stripOfSpan, profileOfSpan, bonded, ...clouds }),
  );
}

/** What changed since the revision before, told under headings and by the strip that shows it. */
function stripsChanged(plant: Plant, cut: readonly Strip[], { since, isAsBuilt = false }: Revised) {
  const groups = [
    ...(since ? changeGroups({ before: since.before, after: plant }, since.rows) : []),
    ...(isAsBuilt ? undrawnReadings(plant) : []),
  ];
  const lines = groups.flatMap((one) => one.lines);
  const byStrip = byNearestStrip(plant, cut, placedChanges(plant, since?.before ?? null, lines), (one) => one.at);
  const keyOf = new Map([...byStrip].flatMap(([key, changes]) => changes.map((one) => [one.text, key] as const)));
  const sheetOf = ({ text }: ChangeLine) => keyOf.get(text);
  const told = isAsBuilt
    ? "What was built otherwise than designed"
    : since && `What changed since revision ${since.letter}`;
  return { since: told, isAsBuilt, groups, lines, byStrip, sheetOf };
}

function cutProfiles(
  plant: Plant,
  paper: Paper,
  runs: readonly SpanRun[],
  [first]: readonly Strip[],
  isAsBuilt: boolean,
) {
  return first ? profileRows(plant, runs, rowPapers(plant, paper, first.view.scale, isAsBuilt ? 2 : 1)) : null;
}

/** Terminals as the light meets them: cable by cable, from the feed end. */
export function terminalOrder(plant: Plant): readonly string[] {
  return cablesInOrder(plant).flatMap((cable) => terminalsAlong(plant, cable.id));
}

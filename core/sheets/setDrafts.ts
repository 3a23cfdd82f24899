import { terminalsAlong } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import type { Finding } from "../rules/finding.ts";
import { billDrafts } from "./billSheet.ts";
import type { Draft, NumberedFinding, SheetKind } from "./book.ts";
import { cablesInOrder } from "./cableOrder.ts";
import { coverDraft } from "./coverSheet.ts";
import { fiberDrafts } from "./fiberChart.ts";
import { findingsByStrip } from "./findingsByStrip.ts";
import { findingDrafts } from "./findingsSheet.ts";
import { guyDrafts } from "./guySheet.ts";
import { permitDrafts } from "./permitSheet.ts";
import { planRows } from "./planRows.ts";
import { planDraft, stripBox } from "./planSheet.ts";
import { rowPapers } from "./profilePaper.ts";
import { type ProfileRow, profileRows } from "./profileRows.ts";
import { profileDraft } from "./profileSheet.ts";
import { reelDrafts } from "./reelSheet.ts";
import { scheduleDrafts } from "./scheduleSheet.ts";
import { polesAlong, type SpanRun, spanRuns } from "./spanRuns.ts";
import { stringingDrafts } from "./stringingSheet.ts";
import { type Strip, strips } from "./strips.ts";
import { terminalDraft } from "./terminalSheet.ts";

/** The sheets of a set in the order they are bound, each waiting for its number; only of the kinds asked for. */
export function setDrafts(
  plant: Plant,
  findings: readonly Finding[],
  openFindings: readonly NumberedFinding[],
  kinds: readonly SheetKind[],
): readonly Draft[] {
  const runs = spanRuns(plant);
  const steps = runs.flatMap((run) => run.steps);
  const cut = strips(plant, runs, stripBox);
  const profiles = kinds.includes("profile") ? cutProfiles(plant, runs, cut) : null;
  const composers: readonly (readonly [SheetKind, () => readonly Draft[]])[] = [
    ["cover", () => [coverDraft(plant, cut)]],
    ["plan", () => planDrafts(plant, cut, openFindings, profiles?.rows ?? [])],
    ["profile", () => profiles?.rows.map((row) => profileDraft(plant, row, profiles.paper)) ?? []],
    ["stringing", () => stringingDrafts(plant, steps)],
    ["guy", () => guyDrafts(plant, polesAlong(steps))],
    ["permit", () => permitDrafts(plant, polesAlong(steps))],
    ["terminal", () => terminalOrder(plant).map((id) => terminalDraft(plant, id))],
    ["fiber", () => fiberDrafts(plant)],
    ["reel", () => reelDrafts(plant)],
    ["schedule", () => scheduleDrafts(plant, terminalOrder(plant))],
    ["bill", () => billDrafts(plant)],
    ["findings", () => findingDrafts(plant, findings, openFindings)],
  ];
  return composers.filter(([kind]) => kinds.includes(kind)).flatMap(([, compose]) => compose());
}

function planDrafts(
  plant: Plant,
  cut: readonly Strip[],
  openFindings: readonly NumberedFinding[],
  profiles: readonly ProfileRow[],
): readonly Draft[] {
  const stripOfSpan = new Map(
    cut.flatMap((strip) => strip.steps.map((step) => [step.spanId, strip.key] as const)).reverse(),
  );
  const profileOfSpan = new Map(
    profiles.flatMap((row) => row.steps.map((step) => [step.span.spanId, row.key] as const)),
  );
  const byStrip = findingsByStrip(plant, cut, openFindings);
  return planRows(cut, stripBox).map((rows) => planDraft(plant, rows, { byStrip, stripOfSpan, profileOfSpan }));
}

function cutProfiles(plant: Plant, runs: readonly SpanRun[], [first]: readonly Strip[]) {
  return first ? profileRows(plant, runs, rowPapers(plant, first.view.scale)) : null;
}

/** Terminals as the light meets them: cable by cable, from the feed end. */
function terminalOrder(plant: Plant): readonly string[] {
  return cablesInOrder(plant).flatMap((cable) => terminalsAlong(plant, cable.id));
}

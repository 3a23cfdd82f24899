import { settingsOf } from "../model/route.ts";
import { terminalsAlong } from "../plant/cablePath.ts";
import { planeDistanceM } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import type { Finding } from "../rules/finding.ts";
import { billDrafts } from "./billSheet.ts";
import { type Book, type Draft, type NumberedFinding, type SheetKind, sheetKinds } from "./book.ts";
import { cablesInOrder } from "./cableOrder.ts";
import { coverDraft } from "./coverSheet.ts";
import type { DrawingSet, Sheet } from "./displayList.ts";
import { findingDrafts } from "./findingsSheet.ts";
import { frame } from "./frame.ts";
import { guyDrafts } from "./guySheet.ts";
import { ansiB } from "./paper.ts";
import { permitDrafts } from "./permitSheet.ts";
import { planRows } from "./planRows.ts";
import { planDraft, stripBox } from "./planSheet.ts";
import { rowPapers } from "./profilePaper.ts";
import { profileRows } from "./profileRows.ts";
import { profileDraft } from "./profileSheet.ts";
import { revisionsInOrder } from "./revisions.ts";
import { scheduleDrafts } from "./scheduleSheet.ts";
import { polesAlong, type SpanRun, spanRuns } from "./spanRuns.ts";
import { stringingDrafts } from "./stringingSheet.ts";
import { alongStep } from "./stripStep.ts";
import { type Strip, strips } from "./strips.ts";
import { terminalDraft } from "./terminalSheet.ts";

type SetOptions = {
  /** Kinds of sheets to draw; all of them where not given. Left out, a kind takes its sheet numbers with it. */
  readonly kinds?: readonly SheetKind[];
};

/**
 * Composes a route's drawing set: cover, strand plan, profiles, a sheet for each terminal, schedules, bill and findings. The same route and
 * findings give the same set.
 *
 * @param findings  of the same route, waived ones included, worst first
 */
export function composeSet(plant: Plant, findings: readonly Finding[], options: SetOptions = {}): DrawingSet {
  const settings = settingsOf(plant.route());
  const kinds = options.kinds ?? sheetKinds;
  const openFindings = findings
    .filter((one) => one.waiverId === null)
    .map((finding, index) => ({ number: index + 1, finding }));
  const drafts = allDrafts(plant, findings, openFindings).filter((draft) => kinds.includes(draft.kind));
  const book = bookOf(drafts, openFindings);
  const revisions = revisionsInOrder(plant);
  const notForConstruction = revisions.length === 0 || openFindings.some((one) => one.finding.severity === "error");
  const sheets = drafts.map((draft, index): Sheet => {
    const drawn = draft.draw(book);
    const number = String(index + 1);
    const block = {
      settings,
      revisions,
      sheetTitle: draft.title,
      scale: draft.scale,
      number,
      sheetCount: drafts.length,
      notForConstruction,
    };
    const links = (drawn.links ?? []).flatMap((link) => {
      const to = book.numberOf(link.to);
      return to === undefined ? [] : [{ ...link, to }];
    });
    return {
      number,
      title: draft.title,
      kind: draft.kind,
      sizeMm: ansiB,
      marks: [...drawn.marks, ...frame(block)],
      links,
    };
  });
  return {
    title: `${settings.routeName}: drawing set`,
    subject: [settings.project, settings.place, settings.county].filter((one) => one !== "").join(", "),
    author: settings.company,
    dateIso: revisions.at(-1)?.dateIso ?? "",
    sheets,
  };
}

function allDrafts(
  plant: Plant,
  findings: readonly Finding[],
  openFindings: readonly NumberedFinding[],
): readonly Draft[] {
  const runs = spanRuns(plant);
  const steps = runs.flatMap((run) => run.steps);
  const cut = strips(plant, runs, stripBox);
  const stripOfSpan = new Map(
    cut.flatMap((strip) => strip.steps.map((step) => [step.spanId, strip.key] as const)).reverse(),
  );
  const byStrip = findingsByStrip(plant, cut, openFindings);
  return [
    coverDraft(plant, cut),
    ...planRows(cut, stripBox).map((rows) => planDraft(plant, rows, { byStrip, stripOfSpan })),
    ...profileDrafts(plant, runs, cut),
    ...stringingDrafts(plant, steps),
    ...guyDrafts(plant, polesAlong(steps)),
    ...permitDrafts(plant, polesAlong(steps)),
    ...terminalOrder(plant).map((id) => terminalDraft(plant, id)),
    ...scheduleDrafts(plant, terminalOrder(plant)),
    ...billDrafts(plant),
    ...findingDrafts(plant, findings, openFindings),
  ];
}

function profileDrafts(plant: Plant, runs: readonly SpanRun[], cut: readonly Strip[]): readonly Draft[] {
  const [first] = cut;
  if (!first) return [];
  const cutRows = profileRows(plant, runs, rowPapers(plant, first.view.scale));
  return cutRows?.rows.map((row) => profileDraft(plant, row, cutRows.paper)) ?? [];
}

function bookOf(drafts: readonly Draft[], openFindings: readonly NumberedFinding[]): Book {
  const sheets = drafts.map(({ key, kind, title, scale }, index) => ({
    key,
    kind,
    title,
    scale,
    number: String(index + 1),
  }));
  const numbers = new Map(
    drafts.flatMap((draft, index) =>
      [draft.key, ...(draft.otherKeys ?? [])].map((key) => [key, String(index + 1)] as const),
    ),
  );
  return { numberOf: (key) => numbers.get(key), sheets, openFindings };
}

/** Terminals as the light meets them: cable by cable, from the feed end. */
function terminalOrder(plant: Plant): readonly string[] {
  return cablesInOrder(plant).flatMap((cable) => terminalsAlong(plant, cable.id));
}

/** Each finding with the strip whose line is nearest to it. */
function findingsByStrip(plant: Plant, cut: readonly Strip[], findings: readonly NumberedFinding[]) {
  const points = cut.flatMap((strip) =>
    strip.steps.flatMap((step) =>
      [0, 0.25, 0.5, 0.75, 1]
        .filter((frac) => frac >= step.startFrac && frac <= step.endFrac)
        .map((frac) => ({ key: strip.key, at: alongStep(plant, step, frac) })),
    ),
  );
  const byStrip = new Map<string, NumberedFinding[]>();
  for (const one of findings) {
    const { at } = one.finding;
    if (!at) continue;
    let nearest: { key: string; farM: number } | null = null;
    for (const point of points) {
      const farM = planeDistanceM(point.at, at);
      if (!nearest || farM < nearest.farM - 1e-9) nearest = { key: point.key, farM };
    }
    if (nearest) byStrip.set(nearest.key, [...(byStrip.get(nearest.key) ?? []), one]);
  }
  return byStrip;
}

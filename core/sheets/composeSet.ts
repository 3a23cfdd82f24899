import { settingsOf } from "../model/route.ts";
import type { Plant } from "../plant/plant.ts";
import type { Finding } from "../rules/finding.ts";
import { type Book, type Draft, type NumberedFinding, numberOpen, type SheetKind, sheetKinds } from "./book.ts";
import type { DrawingSet, Sheet } from "./displayList.ts";
import { frame } from "./frame.ts";
import { type PaperName, paperOf, usualPaper } from "./paper.ts";
import { revisionsInOrder } from "./revisions.ts";
import { setDrafts } from "./setDrafts.ts";

type SetOptions = {
  /** Kinds of sheets to draw; all of them where not given. Left out, a kind takes its sheet numbers with it. */
  readonly kinds?: readonly SheetKind[];
  /** What it is drawn on; where not given, the usual paper of the route's units. */
  readonly paper?: PaperName;
};

/**
 * Composes a route's drawing set: cover, strand plan and profiles, stringing tables, guys and permits, a sheet for each terminal, fiber
 * charts, schedules, bill and findings. The same route and findings give the same set.
 *
 * @param findings  of the same route, waived ones included, worst first
 */
export function composeSet(plant: Plant, findings: readonly Finding[], options: SetOptions = {}): DrawingSet {
  const settings = settingsOf(plant.route());
  const kinds = options.kinds ?? sheetKinds;
  const openFindings = numberOpen(findings);
  const paper = paperOf(options.paper ?? usualPaper(settings.unitSystem));
  const drafts = setDrafts(plant, paper, findings, openFindings, kinds);
  const book = bookOf(drafts, openFindings);
  const revisions = revisionsInOrder(plant);
  const notForConstruction = revisions.length === 0 || openFindings.some((one) => one.finding.severity === "error");
  const sheets = drafts.map((draft, index): Sheet => {
    const drawn = draft.draw(book);
    const number = String(index + 1);
    const block = {
      paper,
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
      sizeMm: paper.sizeMm,
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

import { layerNamesOf } from "../model/layerNames.ts";
import { settingsOf } from "../model/route.ts";
import type { Settings } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import type { Finding } from "../rules/finding.ts";
import type { PictureOf } from "./asBuilt/photoSheet.ts";
import { type Book, type Draft, type NumberedFinding, type SheetKind, sheetKinds } from "./book.ts";
import { frame } from "./frame.ts";
import type { DrawingSet, Sheet } from "./paper/displayList.ts";
import { companysPaper, type PaperName, paperOf } from "./paper/paper.ts";
import type { Picture } from "./paper/picture.ts";
import { weigher } from "./paper/weigher.ts";
import type { Revised } from "./revised/revised.ts";
import { standingOf } from "./revised/standing.ts";
import { watermark } from "./revised/watermark.ts";
import { revisionsInOrder } from "./revisions.ts";
import { numberOpen } from "./schedule/findingNumbers.ts";
import { type OnKind, setDrafts } from "./setDrafts.ts";

type SetOptions = {
  /** Kinds of sheets to draw; where not given, those the company does not leave out. Left out, a kind takes its sheet numbers with it. */
  readonly kinds?: readonly SheetKind[];
  /** What it is drawn on; where not given, the paper of the company's standards. */
  readonly paper?: PaperName;
  /** How the route stands to its revisions; where not given it is taken for the last one issued. */
  readonly revised?: Revised;
  /** Numbers, kinds or keys of the sheets to draw, the others keeping their numbers; null draws all. */
  readonly only?: readonly string[] | null;
  /** The company's own picture for the title blocks; none where not given. */
  readonly logo?: Picture | null;
  /** Where photos come from; where not given, none is kept. */
  readonly pictureOf?: PictureOf;
  /** Told before the drafts of each kind are made which it is, from 1, of how many. */
  readonly onKind?: OnKind;
  /** Told after each sheet how many of how many are drawn. */
  readonly onSheet?: (doneCount: number, totalCount: number) => void;
};

/**
 * Composes a route's drawing set: cover, strand plan and profiles, stringing tables, guys and permits, a sheet for each terminal, fiber
 * charts, schedules, bill and findings. The same route and findings give the same set.
 *
 * @param findings  of the same route, waived ones included, worst first
 */
export function composeSet(plant: Plant, findings: readonly Finding[], options: SetOptions = {}): DrawingSet {
  const settings = settingsOf(plant.route());
  const kinds = options.kinds ?? usualKinds(settings, options.revised?.isAsBuilt ?? false);
  const openFindings = numberOpen(plant, findings);
  const paper = paperOf(options.paper ?? companysPaper(settings));
  const revisions = revisionsInOrder(plant);
  const revised = options.revised ?? { revisionId: revisions.at(-1)?.id ?? null, since: null };
  const hasErrors = openFindings.some((one) => one.finding.severity === "error");
  const { revision, text, stamps, cloudLetter } = standingOf(plant, revised, hasErrors);
  const drafts = setDrafts(plant, paper, findings, openFindings, kinds, {
    revised,
    cloudLetter,
    pictureOf: options.pictureOf ?? (() => "not kept"),
    onKind: options.onKind ?? (() => {}),
  });
  const book = bookOf(drafts, openFindings);
  const weigh = weigher(settings);
  const under = watermark(stamps, paper);
  const numbered = drafts.map((draft, index) => ({ draft, number: String(index + 1) }));
  const { only = null, onSheet } = options;
  const wanted = numbered.filter(({ draft, number }) => only === null || isOneOf(only, draft, number));
  const numbers = new Set(wanted.map((one) => one.number));
  const sheets = wanted.map(({ draft, number }, index): Sheet => {
    const drawn = draft.draw(book);
    onSheet?.(index + 1, wanted.length);
    const block = {
      paper,
      settings,
      revisions,
      revision,
      revisionText: text,
      sheetTitle: draft.title,
      scale: draft.scale,
      number,
      logo: options.logo ?? null,
      sheetCount: drafts.length,
      stamps,
    };
    const links = (drawn.links ?? []).flatMap((link) => {
      const to = book.numberOf(link.to);
      return to === undefined || !numbers.has(to) ? [] : [{ ...link, to }];
    });
    return {
      number,
      title: draft.title,
      kind: draft.kind,
      keys: [draft.key, ...(draft.otherKeys ?? [])],
      scale: draft.scale,
      ...(draft.names ? { names: draft.names } : {}),
      sizeMm: paper.sizeMm,
      marks: [...under, ...drawn.marks, ...frame(block)].map(weigh),
      links,
    };
  });
  return {
    title: `${settings.routeName}: drawing set`,
    subject: [settings.project, settings.place, settings.county].filter((one) => one !== "").join(", "),
    author: settings.company,
    dateIso: revision?.dateIso ?? revisions.at(-1)?.dateIso ?? "",
    layerNames: layerNamesOf(settings.layerNames),
    sheets,
  };
}

/** Kinds of sheets of a set where nobody asks for others: those the company does not leave out. */
export function usualKinds(
  { sheetsLeftOut }: Pick<Settings, "sheetsLeftOut">,
  isAsBuilt: boolean,
): readonly SheetKind[] {
  const leftOut = sheetsLeftOut.split(",");
  // the report tells of the design and the readings beside it, the forms are filled in
  const away = isAsBuilt ? [...leftOut, "closeout", "report"] : leftOut;
  return sheetKinds.filter((kind) => !away.includes(kind));
}

function isOneOf(only: readonly string[], { key, kind }: Draft, number: string): boolean {
  return [key, kind, number].some((one) => only.includes(one));
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

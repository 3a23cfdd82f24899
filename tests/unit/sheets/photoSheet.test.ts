import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Subject, subjectOf } from "../../../core/closeout/subject.ts";
import { writeSheetDxf } from "../../../core/dxf/writeSheetDxf.ts";
import { paperNames } from "../../../core/model/paperNames.ts";
import type { Route } from "../../../core/model/route.ts";
import type { Row } from "../../../core/model/tables.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { photoGroups } from "../../../core/sheets/asBuilt/photoOrder.ts";
import { type PictureOf, photoRows } from "../../../core/sheets/asBuilt/photoSheet.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import type { ImageMark, Sheet } from "../../../core/sheets/paper/displayList.ts";
import { outsideBorder, overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { paperOf } from "../../../core/sheets/paper/paper.ts";
import { writeSvg } from "../../../core/sheets/paper/writeSvg.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { photoOf, punchOf } from "../../fixtures/route/readingRow.ts";

const terminal2 = subjectOf("terminal", "terminal-2");
const photo = (id: string, about: Partial<Row<"photo">> = {}): Row<"photo"> => ({ ...photoOf(id), ...about });
const routeWith = (photos: readonly Row<"photo">[], route: Route = smallRoute()) => withRows(route, "photo", photos);
const punched = withRows(smallRoute(), "punch", [punchOf("punch-1", 1)]);
const mended = [
  photo("punch-1 after", { moment: "after", atIso: "2030-05-02T08:00:00Z" }),
  photo("another", { atIso: "2030-05-01T09:00:00Z" }),
  photo("punch-1 before", { moment: "before" }),
];

const wide: PictureOf = () => ({ href: "data:image/jpeg;base64,/9j/", widthPx: 1600, heightPx: 1200 });
const pagesOf = (route: Route, pictureOf?: PictureOf, options = {}) =>
  composeSet(openPlant(route), [], {
    kinds: ["report"],
    ...(pictureOf ? { pictureOf } : {}),
    ...options,
  }).sheets.filter((one) => one.title.startsWith("Closeout report: pictures"));
const imagesOf = (sheets: readonly Sheet[]) =>
  sheets.flatMap(({ marks }) => marks.filter((mark): mark is ImageMark => mark.kind === "image"));
const textsOf = (sheets: readonly Sheet[]) =>
  sheets.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));

describe("photos behind the closeout report", () => {
  test("are none where nobody took one", () => {
    expect(pagesOf(punched, wide)).toEqual([]);
  });

  test("go along the route, terminal after terminal, things that are gone at the end", () => {
    const about: readonly (readonly [string, Subject])[] = [
      ["gone", subjectOf("terminal", "terminal-9")],
      ["second", terminal2],
      ["strand", subjectOf("strandSection", "strand-1")],
      ["first", subjectOf("terminal", "terminal-1")],
    ];
    const route = routeWith(about.map(([id, subject]) => photo(id, subject)));
    expect(
      photoGroups(openPlant(route))
        .flat()
        .map(({ id }) => id),
    ).toEqual(["first", "second", "strand", "gone"]);
  });

  test("of one punch item stand together, before and then after, and are told by the item", () => {
    const route = routeWith(mended, punched);
    expect(photoGroups(openPlant(route)).map((group) => group.map(({ id }) => id))).toEqual([
      ["punch-1 before", "punch-1 after"],
      ["another"],
    ]);
    const texts = textsOf(pagesOf(route, wide));
    expect(texts).toContain("Punch item 1, before it was mended: Hangs crooked");
    expect(texts).toContain("Punch item 1, after it was mended: Hangs crooked");
  });

  test("of one group are never parted into two rows that could hold them, and none is lost", () => {
    const groups = fc.array(fc.array(fc.integer(), { minLength: 1, maxLength: 2 }), { maxLength: 30 });
    fc.assert(
      fc.property(groups, fc.integer({ min: 1, max: 7 }), (all, across) => {
        const rows = photoRows(all, across);
        expect(rows.flat()).toEqual(all.flat());
        expect(rows.every((row) => row.length >= 1 && row.length <= across)).toBe(true);
        const rowOf = rows.flatMap((row, at) => row.map(() => at));
        let at = 0;
        for (const group of all) {
          if (group.length <= across) expect(new Set(rowOf.slice(at, at + group.length)).size).toBe(1);
          at += group.length;
        }
      }),
    );
  });

  test("keep their shape inside the border of every paper, over no words", () => {
    const many = Array.from({ length: 9 }, (_, at) =>
      photo(`photo-${at}`, { caption: "How it hangs ".repeat(at * 3) }),
    );
    for (const paper of paperNames) {
      for (const [widthPx, heightPx] of [
        [1600, 1200],
        [900, 1600],
        [1600, 10],
      ] as const) {
        const pages = pagesOf(routeWith(many), () => ({ href: "data:image/jpeg;base64,/9j/", widthPx, heightPx }), {
          paper,
        });
        const images = imagesOf(pages);
        expect(images).toHaveLength(9);
        for (const { boxMm } of images) expect(boxMm[2] / boxMm[3]).toBeCloseTo(widthPx / heightPx, 6);
        for (const page of pages) expect(outsideBorder(page, paperOf(paper).border)).toEqual([]);
        expect(pages.flatMap(overlaps)).toEqual([]);
      }
    }
  });

  test("stand three abreast in two rows on 11 by 17 in, each under what it shows, who took it and when", () => {
    const route = routeWith(Array.from({ length: 7 }, (_, at) => photo(`photo-${at}`, { caption: "Bracket" })));
    const pages = pagesOf(route, wide, { paper: "ANSI B" });
    expect(pages.map((page) => imagesOf([page]).length)).toEqual([6, 1]);
    expect(pages.map(({ title }) => title)).toEqual([
      "Closeout report: pictures, 1 of 2",
      "Closeout report: pictures, 2 of 2",
    ]);
    expect(textsOf(pages.slice(1))).toEqual(
      expect.arrayContaining(["terminal T1", "As built: Bracket", "Crew 1, 2030-05-01"]),
    );
  });

  test("that are not there or are none are frames that say so", () => {
    const route = routeWith([photo("photo-1")]);
    expect(imagesOf(pagesOf(route))).toEqual([]);
    expect(textsOf(pagesOf(route))).toContain("◆ The route file does not keep this picture.");
    expect(textsOf(pagesOf(route, () => "unreadable")).join(" ")).toContain("no picture that can be drawn");
    expect(textsOf(pagesOf(route, () => "over the limit")).join(" ")).toContain("as many as one drawing holds");
  });

  test("are pictures in SVG, told by what they show; in DXF, which holds none, their frames and that", () => {
    const [page] = pagesOf(routeWith([photo("photo-1")]), wide);
    if (!page) throw new Error("the route has no sheet of photos");
    expect(writeSvg(page)).toMatch(/<image [^>]*href="data:image\/jpeg;base64,[^>]*><title>Photo of terminal T1</);
    expect(writeSheetDxf(page)).toContain("Photo of terminal T1");
  });

  test("are asked for only when their own sheet is drawn", () => {
    const asked: string[] = [];
    const route = routeWith(Array.from({ length: 7 }, (_, at) => photo(`photo-${at}`, { keptHash: `hash ${at}` })));
    const pictureOf: PictureOf = (hash) => {
      asked.push(hash);
      return "not kept";
    };
    composeSet(openPlant(route), [], { pictureOf, only: ["report pictures 2"], paper: "ANSI B" });
    expect(asked).toEqual(["hash 6"]);
  });
});

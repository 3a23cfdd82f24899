import { photoText } from "../../closeout/photoText.ts";
import { thingName } from "../../closeout/thingName.ts";
import type { Row } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";
import type { Draft } from "../book.ts";
import type { Mark } from "../paper/displayList.ts";
import { shortenText, wrapText } from "../paper/fitText.ts";
import { asFigure, asParagraph, bodyMm, rectangle, smallMm, words } from "../paper/marks.ts";
import { columnBoxes, columnsAbreast, type PaperBox } from "../paper/paper.ts";
import { fittedMm, type Picture } from "../paper/picture.ts";
import { photoGroups } from "./photoOrder.ts";

type Photo = Row<"photo">;

/** Why a photo is not drawn. */
type NoPicture = "not kept" | "unreadable" | "over the limit";

/** The picture kept under a hash, or why there is none to draw. */
export type PictureOf = (keptHash: string) => Picture | NoPicture;

/** Least room of a photo with the words under it, mm. */
const leastMm = { width: 112, height: 68 } as const;
const gutterMm = 8;
const whiteMm = 1;
const leadMm = 3.6;
const underMm = 1.6;
/** Name, two lines of what it shows, who and when. */
const lineCount = 4;

/** Sheets of photos in a grid, in order along the route; each is read when its sheet is drawn. */
export function photoDrafts(
  plant: Plant,
  box: PaperBox,
  { pictureOf, beside }: { readonly pictureOf: PictureOf; readonly beside: readonly Mark[] },
): readonly Draft[] {
  const across = columnsAbreast(box, leastMm.width, gutterMm);
  const down = Math.max(1, Math.floor((box.top - box.bottom + gutterMm) / (leastMm.height + gutterMm)));
  const rows = photoRows(photoGroups(plant), across);
  const sheetCount = Math.ceil(rows.length / down);
  return Array.from({ length: sheetCount }, (_, index): Draft => {
    const shown = rows.slice(index * down, (index + 1) * down);
    return {
      key: `report pictures ${index + 1}`,
      kind: "report",
      title: `Closeout report: pictures${sheetCount === 1 ? "" : `, ${index + 1} of ${sheetCount}`}`,
      names: [...new Set(shown.flat().map((one) => thingName(plant, one)))],
      scale: "none",
      draw: () => ({
        marks: [
          ...rowBoxes(box, down).flatMap((row, at) =>
            columnBoxes(row, across, gutterMm).flatMap((cell, column) => {
              const photo = shown[at]?.[column];
              return photo ? photoMarks(plant, photo, cell, pictureOf(photo.keptHash)) : [];
            }),
          ),
          ...beside,
        ],
      }),
    };
  });
}

/** Photos in rows; those of one group stay in one row where it takes them. */
export function photoRows<T>(groups: readonly (readonly T[])[], across: number): readonly (readonly T[])[] {
  const rows: T[][] = [];
  for (const group of groups) {
    const room = across - (rows.at(-1)?.length ?? across);
    if (group.length > room && group.length <= across) rows.push([]);
    for (const one of group) {
      if ((rows.at(-1)?.length ?? across) >= across) rows.push([]);
      rows.at(-1)?.push(one);
    }
  }
  return rows;
}

function rowBoxes(box: PaperBox, down: number): readonly PaperBox[] {
  const height = (box.top - box.bottom - gutterMm * (down - 1)) / down;
  return Array.from({ length: down }, (_, row) => {
    const top = box.top - row * (height + gutterMm);
    return { ...box, top, bottom: top - height };
  });
}

function photoMarks(plant: Plant, photo: Photo, cell: PaperBox, picture: Picture | NoPicture): readonly Mark[] {
  const name = thingName(plant, photo);
  const frame = { ...cell, bottom: cell.bottom + lineCount * leadMm + underMm };
  return [
    rectangle("tables", "fine", [frame.left, frame.bottom], frame.right - frame.left, frame.top - frame.bottom),
    ...(typeof picture === "string" ? insteadMarks(picture, frame) : pictureMarks(picture, name, frame)),
    ...lineMarks(name, photoText(plant, photo), `${photo.by}, ${photo.atIso.slice(0, 10)}`, frame),
  ];
}

/** The picture in the middle of its frame. */
function pictureMarks(picture: Picture, name: string, { left, bottom, right, top }: PaperBox): readonly Mark[] {
  const room = { left: left + whiteMm, bottom: bottom + whiteMm, right: right - whiteMm, top: top - whiteMm };
  const [width, height] = fittedMm(picture, room);
  const told = `Photo of ${name}`;
  const corner = [(left + right - width) / 2, (bottom + top - height) / 2] as const;
  return asFigure(told, [
    { kind: "image", layer: "tables", boxMm: [...corner, width, height], href: picture.href, told },
  ]);
}

function insteadMarks(why: NoPicture, { left, bottom, right, top }: PaperBox): readonly Mark[] {
  const lines = wrapText(whyWords[why], "plain", bodyMm, right - left - 2 * gutterMm);
  const first = (top + bottom) / 2 + ((lines.length - 1) * leadMm) / 2 - bodyMm / 2;
  return asParagraph(
    lines.map((text, at) => words(text, [(left + right) / 2, first - at * leadMm], { align: "middle", grey: 0.35 })),
  );
}

function lineMarks(name: string, shown: string, signed: string, { left, bottom, right }: PaperBox): readonly Mark[] {
  const wide = right - left;
  const [first = "", ...more] = wrapText(shown, "plain", smallMm, wide);
  const second = more.length === 0 ? [] : [shortenText(more.join(" "), "plain", smallMm, wide)];
  const base = (line: number) => bottom - (line + 1) * leadMm;
  const small = [first, ...second, shortenText(signed, "plain", smallMm, wide)];
  return asParagraph([
    words(shortenText(name, "plainBold", bodyMm, wide), [left, base(0)], { face: "plainBold" }),
    ...small.map((text, at) =>
      words(text, [left, base(at + 1)], { heightMm: smallMm, grey: at === small.length - 1 ? 0.35 : 0 }),
    ),
  ]);
}

const whyWords: Readonly<Record<NoPicture, string>> = {
  "not kept": "◆ The route file does not keep this picture.",
  unreadable: "◆ What is kept under this hash is no picture that can be drawn.",
  "over the limit":
    "◆ Not drawn here: the pictures before it are as many as one drawing holds. The route file keeps it.",
};

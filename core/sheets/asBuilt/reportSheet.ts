import type { Plant } from "../../plant/plant.ts";
import type { Finding } from "../../rules/finding.ts";
import type { Draft } from "../book.ts";
import { noteFoot } from "../paper/noteFoot.ts";
import type { Paper } from "../paper/paper.ts";
import type { Schedule } from "../schedule/schedule.ts";
import { tableDrafts } from "../schedule/tableSheets.ts";
import { photoSchedule, sheathSchedule, traceSchedule } from "./fiberRows.ts";
import { type PictureOf, photoDrafts } from "./photoSheet.ts";
import { readingSchedule } from "./readingRows.ts";
import { gateSchedule, kindSchedule, punchSchedule, signatureSchedule } from "./standingRows.ts";

/**
 * The closeout report: how far the route has come, what was read beside what was designed, and who signed; behind it the photos. None while
 * nothing is built.
 */
export function reportDrafts(
  plant: Plant,
  paper: Paper,
  findings: readonly Finding[],
  pictureOf: PictureOf,
): readonly Draft[] {
  const tables = reportSchedules(plant, findings).flatMap(({ name, columns, rows, notes }) => {
    const { rest, marks } = noteFoot([caution, ...notes], paper.drawing);
    const title = `Closeout report: ${name.toLowerCase()}`;
    return tableDrafts({ kind: "report", key: `report ${name}`, title, columns, rows, box: rest, beside: marks });
  });
  const { rest, marks } = noteFoot([caution], paper.drawing);
  return [...tables, ...photoDrafts(plant, rest, { pictureOf, beside: marks })];
}

/** The tables of the closeout report; those without a row are left out, all of them while nothing was built, read or signed. */
export function reportSchedules(plant: Plant, findings: readonly Finding[]): readonly Schedule[] {
  const isBegun = (["milestone", "reading", "trace", "photo", "punch", "signOff"] as const).some(
    (table) => plant.all(table).length > 0,
  );
  if (!isBegun) return [];
  return [
    gateSchedule(plant, findings),
    kindSchedule(plant),
    readingSchedule(plant, findings),
    sheathSchedule(plant),
    traceSchedule(plant),
    photoSchedule(plant),
    punchSchedule(plant),
    signatureSchedule(plant),
  ].filter(({ rows }) => rows.some((row) => !("group" in row)));
}

const caution =
  "This report tells which checks found nothing against which limits. It is no statement that anything may be climbed, touched or looked into.";

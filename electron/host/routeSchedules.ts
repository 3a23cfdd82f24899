import { settingsOf } from "../../core/model/route.ts";
import { revisionsInOrder } from "../../core/sheets/revisions.ts";
import { type FlatSchedule, flatSchedule } from "../../core/sheets/schedule/schedule.ts";
import { schedules } from "../../core/sheets/schedule/schedules.ts";
import type { Session } from "./session.ts";
import { type About, writeWorkbook } from "./writeWorkbook.ts";

const unitWords = {
  us: "US customary: lengths in feet, forces in pounds-force, as each heading says",
  metric: "metric: lengths in metres, forces in kilonewtons, as each heading says",
} as const;

/** The schedules of a route as plain tables. */
export function routeSchedules(session: Session): readonly FlatSchedule[] {
  return schedules(session.plant, session.findings()).map(flatSchedule);
}

/** The schedules of a route as one workbook. */
export function routeWorkbook(session: Session): Promise<Uint8Array> {
  const tables = routeSchedules(session);
  return writeWorkbook(tables, aboutOf(session, tables));
}

function aboutOf(session: Session, tables: readonly FlatSchedule[]): About {
  const { routeName, project, place, county, company, unitSystem } = settingsOf(session.route());
  const latest = revisionsInOrder(session.plant).at(-1);
  return [
    ["Route", routeName],
    ["File", session.fileName],
    ["Project", project],
    ["Place", [place, county].filter((one) => one !== "").join(", ")],
    ["Company", company],
    ["Revision", latest ? `${latest.letter}, ${latest.dateIso}` : "none issued"],
    ["Units", unitWords[unitSystem]],
    ...tables.flatMap(({ name, notes }) => notes.map((note): About[number] => [name, note])),
    [
      "Marks",
      "◆ over its limit, or to be decided first; unverified: read from memory by nobody yet in the document named",
    ],
    [
      "Caution",
      "Values are design aids. Local code, the pole owner's standard and the judgement of a licensed engineer govern.",
    ],
  ];
}

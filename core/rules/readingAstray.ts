import { cableOfMark } from "../closeout/sheathRead.ts";
import { subjectTables } from "../closeout/subject.ts";
import { builtKindWords, readingWords } from "../closeout/words.ts";
import type { Row } from "../model/tables.ts";
import { poleStationM } from "../plant/cablePath.ts";
import { spansAtPole } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { portsOf } from "../plant/terminalView.ts";
import { type Rule, routeItself } from "./rule.ts";

export const readingAstray: Rule = {
  id: "reading-astray",
  title: "What was read is still on the drawing",
  compares: "The thing a reading was taken of, against what is drawn now.",
  severity: "warning",
  basis: routeItself,
  each: "reading",
  *check(plant, id) {
    const reading = plant.rowOf("reading", id);
    if (isDrawn(plant, reading)) return;
    yield {
      subjects: [{ table: "reading", id }],
      message: `What ${reading.by} read of a ${builtKindWords[reading.kind].one} (${readingWords[reading.what]}) belongs to nothing that is drawn now.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [{ label: "Remove the reading", command: "reading.remove", input: { readingId: id } }],
    };
  },
};

type Reading = Row<"reading">;

function isDrawn(plant: Plant, reading: Reading): boolean {
  const { kind, subjectId, port, alongId, what } = reading;
  if (!plant.row(subjectTables[kind], subjectId)) return false;
  if (kind === "port") return portsOf(plant, subjectId).some((one) => one.port === port);
  if (kind === "bond")
    return spansAtPole(plant, subjectId).some((one) => plant.rowOf("span", one).strandSectionId === alongId);
  if (kind !== "pole" || what !== "mark") return true;
  const cableId = cableOfMark(plant, reading);
  return cableId !== null && poleStationM(plant, cableId, subjectId) !== null;
}

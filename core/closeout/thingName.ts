import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import type { Subject } from "./subject.ts";
import { builtKindWords } from "./words.ts";

/** What people call a thing of the closeout: `terminal T-4`, `port 3 of T-4`, `drop of 12 Mill Rd`; by its id where it is gone. */
export function thingName(plant: Plant, { kind, subjectId, port, alongId }: Subject): string {
  const { one } = builtKindWords[kind];
  switch (kind) {
    case "pole": {
      const cable = plant.row("cable", alongId);
      return `${one} ${plant.row("pole", subjectId)?.tag ?? subjectId}${cable ? `, cable ${cable.name}` : ""}`;
    }
    case "bond": {
      const section = plant.row("strandSection", alongId);
      return `${one} at ${plant.row("pole", subjectId)?.tag ?? subjectId}${section ? ` of ${section.name}` : ""}`;
    }
    case "span":
      return `${one} ${plant.row("span", subjectId) ? spanName(plant, subjectId) : subjectId}`;
    case "port":
      return `${one} ${port} of ${plant.row("terminal", subjectId)?.name ?? subjectId}`;
    case "drop": {
      const unitId = plant.row("drop", subjectId)?.livingUnitId;
      return `${one} of ${unitId === undefined ? subjectId : plant.rowOf("livingUnit", unitId).address}`;
    }
    case "strandSection":
    case "cable":
    case "closure":
    case "terminal":
      return `${one} ${plant.row(kind, subjectId)?.name ?? subjectId}`;
  }
}

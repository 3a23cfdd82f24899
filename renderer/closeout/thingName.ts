import type { Subject } from "../../core/closeout/subject.ts";
import { builtKindWords } from "../../core/closeout/words.ts";
import { spanName } from "../../core/plant/names.ts";
import type { Plant } from "../../core/plant/plant.ts";

/** What people call a thing of the closeout: `terminal T4`, `port 3 of T4`, `drop of 12 Mill Rd`. */
export function thingName(plant: Plant, { kind, subjectId, port }: Subject): string {
  const { one } = builtKindWords[kind];
  switch (kind) {
    case "pole":
    case "bond":
      return `${one}${kind === "bond" ? " at" : ""} ${plant.row("pole", subjectId)?.tag ?? subjectId}`;
    case "span":
      return plant.row("span", subjectId) ? `${one} ${spanName(plant, subjectId)}` : `${one} ${subjectId}`;
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

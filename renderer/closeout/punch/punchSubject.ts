import { type Subject, subjectOf } from "../../../core/closeout/subject.ts";
import type { TableName } from "../../../core/model/tables.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import type { RefKey } from "../../app/ref.ts";
import { splitRef } from "../../app/ref.ts";

/** The thing that is built for a row of the route: a guy's is its pole, a crossing's its span, a house's its drop; null where there is none. */
export function builtThingOf(plant: Plant, table: TableName, id: string): Subject | null {
  if (!plant.row(table, id)) return null;
  switch (table) {
    case "pole":
    case "span":
    case "strandSection":
    case "cable":
    case "closure":
    case "terminal":
    case "drop":
      return subjectOf(table, id);
    case "attachment":
    case "guy":
      return subjectOf("pole", plant.rowOf(table, id).poleId);
    case "crossing":
    case "structure":
    case "groundPoint":
      return subjectOf("span", plant.rowOf(table, id).spanId);
    case "slack": {
      const { terminalId, spanId } = plant.rowOf("slack", id);
      return terminalId === null ? subjectOf("span", spanId) : subjectOf("terminal", terminalId);
    }
    case "livingUnit": {
      const [dropId] = plant.where("drop", "livingUnitId", id);
      return dropId === undefined ? null : subjectOf("drop", dropId);
    }
    case "reading": {
      const { kind, subjectId, port, alongId, what } = plant.rowOf("reading", id);
      return subjectOf(kind, subjectId, port, what === "mark" ? "" : alongId);
    }
    default:
      return null;
  }
}

/** The thing last chosen on the diagram that can be on the punch list. */
export function chosenThing(plant: Plant, selection: readonly RefKey[]): Subject | null {
  for (const ref of [...selection].reverse()) {
    const { table, id } = splitRef(ref);
    const thing = builtThingOf(plant, table, id);
    if (thing) return thing;
  }
  return null;
}

/** The row to choose on the diagram for a thing. */
export function shownRef(plant: Plant, { kind, subjectId }: Subject): RefKey {
  if (kind === "port") return `terminal/${subjectId}`;
  if (kind === "bond") return `pole/${subjectId}`;
  if (kind === "drop") return `livingUnit/${plant.row("drop", subjectId)?.livingUnitId ?? ""}`;
  return `${kind}/${subjectId}`;
}

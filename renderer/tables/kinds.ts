import type { Subject } from "../../core/closeout/subject.ts";
import type { Step } from "../../core/edits/runSteps.ts";
import { subjectAstray } from "../../core/edits/subjects.ts";
import { freshIds } from "../../core/model/freshId.ts";
import type { Route } from "../../core/model/route.ts";
import type { TableName } from "../../core/model/tables.ts";
import { cablePath } from "../../core/plant/cablePath.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { portCounts } from "../../core/plant/terminalView.ts";
import { type RefKey, refKey } from "../app/ref.ts";
import { shownRef } from "../closeout/punch/punchSubject.ts";
import { attachmentColumns } from "./columns/attachmentColumns.ts";
import { cableColumns } from "./columns/cableColumns.ts";
import { closureColumns } from "./columns/closureColumns.ts";
import { coilColumns } from "./columns/coilColumns.ts";
import type { Column } from "./columns/column.ts";
import { crossingColumns } from "./columns/crossingColumns.ts";
import { dropColumns } from "./columns/dropColumns.ts";
import { dropCrossingColumns } from "./columns/dropCrossingColumns.ts";
import { feedColumns } from "./columns/feedColumns.ts";
import { fiberColumns } from "./columns/fiberColumns.ts";
import { groundColumns } from "./columns/groundColumns.ts";
import { guyColumns } from "./columns/guyColumns.ts";
import { placeId, splitPlace } from "./columns/place.ts";
import { poleColumns } from "./columns/poleColumns.ts";
import { portColumns } from "./columns/portColumns.ts";
import { punchColumns } from "./columns/punchColumns.ts";
import { readingColumns } from "./columns/readingColumns.ts";
import { spanColumns } from "./columns/spanColumns.ts";
import { steelColumns } from "./columns/steelColumns.ts";
import { strandColumns } from "./columns/strandColumns.ts";
import { structureColumns } from "./columns/structureColumns.ts";
import { terminalColumns } from "./columns/terminalColumns.ts";
import { unitColumns } from "./columns/unitColumns.ts";
import { wireSagColumns } from "./columns/wireSagColumns.ts";
import { newRowStep } from "./newRow.ts";

/** One kind of row and its table. */
export type Kind = {
  readonly id: string;
  /** What the tab says. */
  readonly name: string;
  /** What one row is called. */
  readonly thing: string;
  readonly columns: readonly Column[];
  /** Ids of all rows; what they are made of is `tables`. */
  readonly ids: (route: Route, plant: Plant) => readonly string[];
  readonly tables: readonly TableName[];
  /** What stands for a row on the diagram. */
  readonly refs: (plant: Plant, rowId: string) => readonly RefKey[];
  /** The row of the route that Remove takes away; null where there is none. */
  readonly row: (plant: Plant, rowId: string) => { readonly table: TableName; readonly id: string } | null;
  /** The step that adds a row beside the one under the hand; null where rows are made elsewhere. */
  readonly add: ((plant: Plant, besideId: string | null) => Step | null) | null;
};

/** A kind whose rows are the rows of one table. */
function plainKind(table: TableName, rest: Pick<Kind, "name" | "thing" | "columns"> & Partial<Kind>): Kind {
  return {
    id: table,
    ids: (route) => [...route[table].keys()],
    tables: [table],
    refs: (_, id) => [refKey(table, id)],
    row: (_, id) => ({ table, id }),
    add: null,
    ...rest,
  };
}

const adds = (table: Parameters<typeof newRowStep>[0]) => ({
  add: (plant: Plant, besideId: string | null) => newRowStep(table, plant, freshIds(plant.route(), table)(), besideId),
});

/** Every kind, in the order of the tabs. */
export const kinds: readonly Kind[] = [
  plainKind("pole", { name: "Poles", thing: "pole", columns: poleColumns, ...adds("pole") }),
  plainKind("span", { name: "Spans", thing: "span", columns: spanColumns }),
  plainKind("attachment", {
    name: "Attachments",
    thing: "attachment",
    columns: attachmentColumns,
    refs: (plant, id) => [refKey("pole", plant.rowOf("attachment", id).poleId)],
    ...adds("attachment"),
  }),
  plainKind("crossing", { name: "Crossings", thing: "crossing", columns: crossingColumns, ...adds("crossing") }),
  plainKind("groundPoint", {
    name: "Ground",
    thing: "ground point",
    columns: groundColumns,
    refs: (plant, id) => [refKey("span", plant.rowOf("groundPoint", id).spanId)],
    ...adds("groundPoint"),
  }),
  plainKind("structure", {
    name: "Structures",
    thing: "structure",
    columns: structureColumns,
    refs: (plant, id) => [refKey("span", plant.rowOf("structure", id).spanId)],
    ...adds("structure"),
  }),
  plainKind("wireSag", {
    name: "Measured sags",
    thing: "measured sag",
    columns: wireSagColumns,
    refs: (plant, id) => [refKey("span", plant.rowOf("wireSag", id).spanId)],
    ...adds("wireSag"),
  }),
  plainKind("guy", {
    name: "Guys",
    thing: "guy",
    columns: guyColumns,
    refs: (plant, id) => [refKey("pole", plant.rowOf("guy", id).poleId)],
    ...adds("guy"),
  }),
  plainKind("strandSection", {
    name: "Strand",
    thing: "strand section",
    columns: strandColumns,
    refs: (plant, id) => plant.where("span", "strandSectionId", id).map((one) => refKey("span", one)),
    row: () => null,
  }),
  plainKind("span", {
    id: "steel",
    name: "Steel and clearance",
    thing: "span",
    columns: steelColumns,
    ids: (route) => [...route.span.values()].filter((one) => one.strandSectionId !== null).map((one) => one.id),
    row: () => null,
  }),
  plainKind("cable", {
    name: "Cables",
    thing: "cable",
    columns: cableColumns,
    refs: (plant, id) => cablePath(plant, id).steps.map((step) => refKey("span", step.spanId)),
    ...adds("cable"),
    row: () => null,
  }),
  plainKind("slack", { name: "Coils", thing: "coil", columns: coilColumns, ...adds("slack") }),
  plainKind("closure", { name: "Closures", thing: "closure", columns: closureColumns, ...adds("closure") }),
  plainKind("terminal", { name: "Terminals", thing: "terminal", columns: terminalColumns }),
  {
    id: "port",
    name: "Ports",
    thing: "port",
    columns: portColumns,
    ids: (route, plant) => [...route.terminal.keys()].flatMap((id) => numbered(id, portCounts(plant, id).total)),
    tables: ["terminal"],
    refs: (_, id) => [refKey("terminal", splitPlace(id).ownerId)],
    row: () => null,
    add: null,
  },
  {
    id: "fiber",
    name: "Fibers",
    thing: "fiber",
    columns: fiberColumns,
    ids: (route, plant) =>
      [...route.cable.values()].flatMap(({ id, cableTypeId }) =>
        numbered(id, plant.rowOf("cableType", cableTypeId).fiberCount),
      ),
    tables: ["cable", "cableType"],
    refs: (plant, id) => {
      const { ownerId, number } = splitPlace(id);
      const [useId] = plant.whereAll("fiberUse", { cableId: ownerId, fiber: String(number) });
      const terminalId = useId === undefined ? null : plant.rowOf("fiberUse", useId).terminalId;
      return terminalId === null ? [] : [refKey("terminal", terminalId)];
    },
    row: () => null,
    add: null,
  },
  plainKind("livingUnit", { name: "Living units", thing: "living unit", columns: unitColumns, ...adds("livingUnit") }),
  plainKind("drop", {
    name: "Drops",
    thing: "drop",
    columns: dropColumns,
    refs: (plant, id) => [refKey("livingUnit", plant.rowOf("drop", id).livingUnitId)],
  }),
  plainKind("dropCrossing", {
    name: "Drop crossings",
    thing: "drop crossing",
    columns: dropCrossingColumns,
    refs: (plant, id) => [refKey("livingUnit", plant.rowOf("dropCrossing", id).livingUnitId)],
    ...adds("dropCrossing"),
  }),
  plainKind("feed", { name: "Feeds", thing: "hub output", columns: feedColumns, refs: () => [], ...adds("feed") }),
  plainKind("reading", {
    name: "Readings",
    thing: "reading",
    columns: readingColumns,
    refs: (plant, id) => refsOfThing(plant, plant.rowOf("reading", id)),
    row: () => null,
  }),
  plainKind("punch", {
    name: "Punch list",
    thing: "item of the punch list",
    columns: punchColumns,
    refs: (plant, id) => refsOfThing(plant, plant.rowOf("punch", id)),
    row: () => null,
  }),
];

/** The kind of an id; the first where there is none. */
export function kindOf(id: string): Kind {
  const [first] = kinds;
  const found = kinds.find((one) => one.id === id) ?? first;
  if (!found) throw new Error("there are no kinds of rows");
  return found;
}

/** What stands on the diagram for a thing that is built; nothing where it is gone. */
function refsOfThing(plant: Plant, thing: Subject): readonly RefKey[] {
  return subjectAstray(plant.route(), thing) ? [] : [shownRef(plant, thing)];
}

function numbered(ownerId: string, count: number): string[] {
  return Array.from({ length: count }, (_, index) => placeId(ownerId, index + 1));
}

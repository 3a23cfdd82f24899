import type { Step } from "../../core/edits/runSteps.ts";
import { freshIds } from "../../core/model/freshId.ts";
import type { TableName } from "../../core/model/tables.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { runCommand } from "../app/edits.ts";
import { type RefKey, refKey, splitRef } from "../app/ref.ts";
import type { Session } from "../app/session.ts";

/** How far beside a thing without a length another like it goes, m. */
const besideM = 2;

/** The edit that adds another row like one, and the new row's name. */
type Another = Step & { readonly ref: RefKey };

/**
 * Another row like one: a terminal at the other pole of its span; what lies along a span beside it, towards where there is more room.
 * Null where there is no room, or the thing is known by a name or a place that is its own.
 */
export function anotherLike(plant: Plant, ref: RefKey): Another | null {
  const { table, id } = splitRef(ref);
  if (!plant.row(table, id)) return null;
  const freshId = (kind: TableName): string => freshIds(plant.route(), kind)();
  switch (table) {
    case "terminal": {
      const { spanId, offsetM, terminalModelId } = plant.rowOf(table, id);
      const span = plant.rowOf("span", spanId);
      const poleId = offsetM <= span.lengthM / 2 ? span.toPoleId : span.fromPoleId;
      const terminalId = freshId(table);
      const input = { terminalId, spanId, poleId, terminalModelId };
      return { command: "terminal.hang", input, ref: refKey(table, terminalId) };
    }
    case "crossing":
    case "structure": {
      const { id: _, ...row } = plant.rowOf(table, id);
      const alongM = "widthM" in row ? row.widthM : row.lengthM;
      return beside(plant, table, row, alongM, `${table}Id`, freshId(table));
    }
    case "groundPoint": {
      const { id: _, ...row } = plant.rowOf(table, id);
      return beside(plant, table, row, besideM, "groundPointId", freshId(table));
    }
    case "slack": {
      const { id: _, ...row } = plant.rowOf(table, id);
      return row.kind === "storage" ? beside(plant, table, row, besideM, "slackId", freshId(table)) : null;
    }
    default:
      return null;
  }
}

function beside(
  plant: Plant,
  table: "crossing" | "structure" | "groundPoint" | "slack",
  row: { readonly spanId: string; readonly offsetM: number },
  byM: number,
  idColumn: string,
  newId: string,
): Another | null {
  const { lengthM } = plant.rowOf("span", row.spanId);
  const offsetM = row.offsetM <= lengthM / 2 ? row.offsetM + byM : row.offsetM - byM;
  if (!(offsetM > 0 && offsetM < lengthM)) return null;
  return { command: `${table}.add`, input: { ...row, offsetM, [idColumn]: newId }, ref: refKey(table, newId) };
}

/** The one chosen thing that another like it can be added of; null where something else or more is chosen. */
export function anotherNow(session: Session): Another | null {
  const [only, ...more] = session.view.getState().selection;
  const plant = session.store.get()?.plant;
  return only === undefined || more.length > 0 || !plant ? null : anotherLike(plant, only);
}

/** Adds another like the chosen one, and chooses it. */
export async function duplicateChosen(session: Session): Promise<void> {
  const another = anotherNow(session);
  if (another) await runCommand(session, another.command, another.input, { view: { selection: [another.ref] } });
}

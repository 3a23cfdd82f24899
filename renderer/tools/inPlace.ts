import type { Route } from "../../core/model/route.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { lookOnlyReason } from "../app/files.ts";
import { type RefKey, refKey, splitRef } from "../app/ref.ts";
import { openRouteOf, type Session, tell } from "../app/session.ts";
import { toolWords } from "./words.ts";

/** A name that can be written on the diagram: what it is, how it reads now, and the edit that changes it. */
type NameField = {
  readonly label: string;
  readonly value: string;
  readonly edit: (text: string) => { readonly command: string; readonly input: unknown };
};

/** The name of a row as a field, or null for a row that is named by others. */
export function nameField(plant: Plant, ref: RefKey): NameField | null {
  const { table, id } = splitRef(ref);
  if (!plant.row(table, id)) return null;
  switch (table) {
    case "pole":
      return {
        label: toolWords.poleTag,
        value: plant.rowOf("pole", id).tag,
        edit: (tag) => ({ command: "pole.rename", input: { poleId: id, tag } }),
      };
    case "terminal":
      return {
        label: toolWords.terminalName,
        value: plant.rowOf("terminal", id).name,
        edit: (name) => ({ command: "terminal.rename", input: { terminalId: id, name } }),
      };
    case "livingUnit":
      return {
        label: toolWords.address,
        value: plant.rowOf("livingUnit", id).address,
        edit: (address) => ({ command: "row.set", input: { table, id, values: { address } } }),
      };
    case "crossing":
      return {
        label: toolWords.crossingName,
        value: plant.rowOf("crossing", id).name,
        edit: (name) => ({ command: "crossing.set", input: { crossingId: id, values: { name } } }),
      };
    case "structure":
      return {
        label: toolWords.structureName,
        value: plant.rowOf("structure", id).name,
        edit: (name) => ({ command: "row.set", input: { table, id, values: { name } } }),
      };
    default:
      return null;
  }
}

/** Makes the name of a row a field on the diagram, where it has one of its own. */
export function openName(session: Session, ref: RefKey): void {
  if (!nameField(openRouteOf(session).plant, ref)) return;
  const reason = lookOnlyReason(session);
  if (reason !== null) tell(session, reason);
  else session.view.setState({ inPlace: ref, selection: [ref] });
}

/** The row after this one among its kind, or before it; round at the ends. */
export function nextOfKind(route: Route, ref: RefKey, step: 1 | -1): RefKey {
  const { table, id } = splitRef(ref);
  const ids = [...route[table].keys()];
  const next = ids[(ids.indexOf(id) + step + ids.length) % ids.length];
  return refKey(table, next ?? id);
}

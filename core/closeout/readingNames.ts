import { type BuiltKind, type ReadingKind, readingKinds } from "../model/closeoutRows.ts";
import { bondsOfRoute } from "../plant/bondPlaces.ts";
import type { Plant } from "../plant/plant.ts";
import { type Subject, subjectOf } from "./subject.ts";

/** A thing as a list of readings names it: by what people call it. */
export type NamedThing = {
  /** A pole's tag, the name of a terminal, closure or cable, the address of a drop's living unit. */
  readonly name: string;
  readonly port: number;
  /** Name of the cable whose sheath is read at a pole, or of the strand that is bonded; empty where there is but one. */
  readonly along: string;
};

/** The kinds of reading that are taken of a kind of thing. */
const readingsOf: Partial<Readonly<Record<BuiltKind, readonly ReadingKind[]>>> = {
  pole: ["height", "mark"],
  terminal: ["offset", "slack", "markBefore", "markAfter"],
  closure: ["markBefore", "markAfter"],
  port: ["power"],
  drop: ["houseTag", "portOfDrop"],
  bond: ["continuity", "resistance"],
};

/** The reading a list calls so, where it is taken of that kind of thing; null else. Case and spaces are no matter. */
export function readingNamed(kind: BuiltKind, name: string): ReadingKind | null {
  const plain = name.replaceAll(/[\s_-]/g, "").toLowerCase();
  const found = readingKinds.find((one) => one.toLowerCase() === plain);
  return found && (found === "note" || readingsOf[kind]?.includes(found)) ? found : null;
}

/** The thing a list names; null where the route has none of that name, or several. */
export function thingNamed(plant: Plant, kind: BuiltKind, { name, port, along }: NamedThing): Subject | null {
  const only = (ids: readonly string[]): string | null => (ids.length === 1 ? (ids[0] ?? null) : null);
  const alongOf = (table: "cable" | "strandSection", ids: readonly string[]): string | null =>
    only(along === "" ? ids : ids.filter((id) => plant.rowOf(table, id).name === along));
  switch (kind) {
    case "pole": {
      const id = only(plant.where("pole", "tag", name));
      const cableId = along === "" ? "" : only(plant.where("cable", "name", along));
      return id === null || cableId === null ? null : subjectOf("pole", id, 0, cableId);
    }
    case "bond": {
      const poleId = only(plant.where("pole", "tag", name));
      const bonded = bondsOfRoute(plant, "").filter((one) => one.poleId === poleId);
      const sectionId = alongOf("strandSection", [...new Set(bonded.map((one) => one.sectionId))]);
      return poleId === null || sectionId === null ? null : subjectOf("bond", poleId, 0, sectionId);
    }
    case "drop": {
      const unitId = only(plant.where("livingUnit", "address", name));
      const dropId = unitId === null ? null : only(plant.where("drop", "livingUnitId", unitId));
      return dropId === null ? null : subjectOf("drop", dropId);
    }
    case "terminal":
    case "port": {
      const id = only(plant.where("terminal", "name", name));
      return id === null ? null : subjectOf(kind, id, kind === "port" ? port : 0);
    }
    case "closure":
    case "cable":
    case "strandSection": {
      const id = only(plant.where(kind, "name", name));
      return id === null ? null : subjectOf(kind, id);
    }
    case "span":
      return null;
  }
}

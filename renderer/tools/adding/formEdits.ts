import { freshIds } from "../../../core/model/freshId.ts";
import type { TableName } from "../../../core/model/tables.ts";
import { type Point, planeDistanceM } from "../../../core/plant/geometry.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { parseLengthM } from "../../../core/units/parseLength.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import type { AddingForm, AddingTool } from "./addingState.ts";
import { extension } from "./clickWith.ts";
import { siteEdit, siteStart } from "./siteEdits.ts";
import { words } from "./words.ts";

/** Fields as typed, by name. */
export type Typed = Readonly<Record<string, string>>;

/** The edit a filled form asks for, or why it cannot be asked yet. */
export type Asked =
  | { readonly commandId: string; readonly table: TableName; readonly id: string; readonly input: object }
  | { readonly field: string; readonly trouble: string };

/** What the fields hold at first. */
export function startOf(form: AddingForm, { plant }: OpenRoute, units: UnitSystem): Typed {
  switch (form.kind) {
    case "crossing":
      return { surface: "road", name: "", width: formatLength(form.widthM, units, "height") };
    case "structure":
    case "groundPoint":
    case "guy":
      return siteStart(form, plant, units);
    case "attachment":
      return { owner: "", kind: "communication", height: "", bonded: "usual" };
    case "unit":
      return { address: "" };
    case "reach":
      return { length: form.text };
  }
}

/** The edit a filled form asks for. */
export function askedBy(form: AddingForm, typed: Typed, open: OpenRoute, tool: AddingTool): Asked {
  const { route } = open;
  const units = route.settings.get("settings")?.unitSystem ?? "us";
  const text = (name: string): string => (typed[name] ?? "").trim();
  switch (form.kind) {
    case "crossing": {
      const isAsDrawn = text("width") === formatLength(form.widthM, units, "height");
      const widthM = isAsDrawn ? form.widthM : lengthM(text("width"), units);
      if (widthM === null) return { field: "width", trouble: words.needsLength };
      const id = freshIds(route, "crossing")();
      const { spanId, offsetM } = form;
      const row = { spanId, offsetM, widthM, name: text("name"), surface: text("surface"), surfaceM: null };
      return { commandId: "crossing.add", table: "crossing", id, input: { crossingId: id, ...row } };
    }
    case "structure":
    case "groundPoint":
    case "guy":
      return siteEdit(form, text, open, units);
    case "attachment": {
      const heightM = lengthM(text("height"), units);
      if (heightM === null) return { field: "height", trouble: words.needsLength };
      const id = freshIds(route, "attachment")();
      const bonded = text("bonded") === "usual" ? text("kind") === "neutral" : text("bonded") === "yes";
      const told = { owner: text("owner"), kind: text("kind"), bonded };
      const row = { poleId: form.poleId, ...told, heightM, voltageV: 0, note: "" };
      return { commandId: "attachment.add", table: "attachment", id, input: { attachmentId: id, ...row } };
    }
    case "unit": {
      if (text("address") === "") return { field: "address", trouble: words.needsAddress };
      const id = freshIds(route, "livingUnit")();
      const { eastM, northM } = form.at;
      const row = {
        address: text("address"),
        eastM,
        northM,
        kind: "home",
        building: "",
        attachHeightM: null,
        groundM: null,
        note: "",
      };
      return { commandId: "unit.add", table: "livingUnit", id, input: { livingUnitId: id, ...row } };
    }
    case "reach": {
      const reachM = lengthM(text("length"), units);
      if (reachM === null) return { field: "length", trouble: words.needsLength };
      const input = extension(open, tool, form.fromPoleId, pointToward(open, form, reachM));
      return { commandId: "pole.extend", table: "pole", id: input.poleId, input };
    }
  }
}

function lengthM(text: string, units: UnitSystem): number | null {
  const read = parseLengthM(text, units);
  return read.ok && read.valueM > 0 ? read.valueM : null;
}

/** The point so far from a pole in the direction of another point. */
function pointToward(
  { plant }: OpenRoute,
  { fromPoleId, toward }: Extract<AddingForm, { kind: "reach" }>,
  reachM: number,
): Point {
  const from = plant.rowOf("pole", fromPoleId);
  const part = reachM / planeDistanceM(from, toward);
  return {
    eastM: from.eastM + (toward.eastM - from.eastM) * part,
    northM: from.northM + (toward.northM - from.northM) * part,
  };
}

import { freshIds } from "../../../core/model/freshId.ts";
import { groundAtM, groundLine } from "../../../core/plant/groundLine.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { strandAtPole } from "../../../core/plant/strandHeight.ts";
import { newtonsPerPoundForce } from "../../../core/units/constants.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { parseLengthM } from "../../../core/units/parseLength.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import type { AddingForm } from "./addingState.ts";
import type { Asked, Typed } from "./formEdits.ts";
import { words } from "./words.ts";

/** Forms of what stands under and beside the line and holds its poles. */
export type SiteForm = Extract<AddingForm, { kind: "structure" | "groundPoint" | "guy" }>;

type Text = (name: string) => string;

/** What the fields of such a form hold at first. */
export function siteStart(form: SiteForm, plant: Plant, units: UnitSystem): Typed {
  switch (form.kind) {
    case "structure":
      return {
        kind: "building",
        name: "",
        along: formatLength(form.lengthM, units, "height"),
        beside: "",
        side: "left",
        top: "",
        bottom: "",
      };
    case "groundPoint": {
      const groundM = assumedGroundM(plant, form);
      return { elevation: groundM === null ? "" : formatLength(groundM, units, "height") };
    }
    case "guy":
      return {
        strand: plant.settings().strandTypeId,
        height: formatLength(strandAtPole(plant, form.poleId).heightM, units, "height"),
        lead: formatLength(wayTo(plant, form).leadM, units, "height"),
        anchor: "",
      };
  }
}

/** The edit such a form asks for. */
export function siteEdit(form: SiteForm, text: Text, { route, plant }: OpenRoute, units: UnitSystem): Asked {
  switch (form.kind) {
    case "structure": {
      const drawn = formatLength(form.lengthM, units, "height");
      const lengthM = text("along") === drawn ? form.lengthM : lengthOf(text("along"), units);
      const besideM = lengthOf(text("beside"), units, true);
      const heightM = lengthOf(text("top"), units);
      if (lengthM === null) return { field: "along", trouble: words.needsLength };
      if (besideM === null) return { field: "beside", trouble: words.needsBeside };
      if (heightM === null) return { field: "top", trouble: words.needsLength };
      const bottomM = text("bottom") === "" ? null : lengthOf(text("bottom"), units);
      if (text("bottom") !== "" && (bottomM === null || bottomM >= heightM))
        return { field: "bottom", trouble: words.needsBottom };
      const { spanId, offsetM } = form;
      const shape = { spanId, offsetM, lengthM, besideM, heightM, bottomM };
      const row = { ...shape, name: text("name"), kind: text("kind"), side: text("side") };
      const id = freshIds(route, "structure")();
      return { commandId: "structure.add", table: "structure", id, input: { structureId: id, ...row } };
    }
    case "groundPoint": {
      const read = parseLengthM(text("elevation"), units);
      if (!read.ok) return { field: "elevation", trouble: words.needsElevation };
      const assumedM = assumedGroundM(plant, form);
      const isAsAssumed = assumedM !== null && text("elevation") === formatLength(assumedM, units, "height");
      const groundM = isAsAssumed ? assumedM : read.valueM;
      const id = freshIds(route, "groundPoint")();
      const { spanId, offsetM } = form;
      return {
        commandId: "groundPoint.add",
        table: "groundPoint",
        id,
        input: { groundPointId: id, spanId, offsetM, groundM },
      };
    }
    case "guy":
      return guyEdit(form, text, { route, plant }, units);
  }
}

function guyEdit(
  form: Extract<SiteForm, { kind: "guy" }>,
  text: Text,
  { route, plant }: Pick<OpenRoute, "route" | "plant">,
  units: UnitSystem,
): Asked {
  const way = wayTo(plant, form);
  const heightM = lengthOf(text("height"), units);
  if (heightM === null) return { field: "height", trouble: words.needsLength };
  const isAsDrawn = text("lead") === formatLength(way.leadM, units, "height");
  const leadM = isAsDrawn ? way.leadM : lengthOf(text("lead"), units);
  if (leadM === null) return { field: "lead", trouble: words.needsLength };
  const holds = text("anchor") === "" ? null : Number(text("anchor").replace(/,/g, ""));
  if (holds !== null && !(holds > 0 && Number.isFinite(holds))) return { field: "anchor", trouble: words.needsForce };
  const anchorN = holds === null ? null : holds * (units === "us" ? newtonsPerPoundForce : 1);
  const id = freshIds(route, "guy")();
  const row = { poleId: form.poleId, strandTypeId: text("strand"), heightM, leadM, directionRad: way.directionRad };
  return { commandId: "guy.add", table: "guy", id, input: { guyId: id, ...row, anchorN, note: "" } };
}

function wayTo(plant: Plant, { poleId, at }: Extract<SiteForm, { kind: "guy" }>) {
  const { eastM, northM } = plant.rowOf("pole", poleId);
  const [east, north] = [at.eastM - eastM, at.northM - northM];
  return { leadM: Math.hypot(east, north), directionRad: Math.atan2(north, east) };
}

/** The ground as it is taken there until it is measured, m; null where nobody can tell. */
function assumedGroundM(plant: Plant, form: Extract<SiteForm, { kind: "groundPoint" }>): number | null {
  const ground = groundLine(plant, form.spanId);
  return ground.kind === "known" ? groundAtM(ground, form.offsetM) : null;
}

/** A length as typed, more than nothing or, where that may be, nothing; null for what is none. */
function lengthOf(text: string, units: UnitSystem, mayBeNothing = false): number | null {
  const read = parseLengthM(text, units);
  return read.ok && (read.valueM > 0 || (mayBeNothing && read.valueM === 0)) ? read.valueM : null;
}

import type { ClearanceSurface } from "../model/catalogueRows.ts";
import type { Structure } from "../model/tables.ts";
import { type Clearance, clearanceOver, surfaceOf } from "./clearance.ts";
import { groundLine } from "./groundLine.ts";
import { lineHeight } from "./lineHeight.ts";
import { defineQuery } from "./plant.ts";

const surfaces = {
  building: { over: "buildingOver", beside: "buildingBeside" },
  walkedRoof: { over: "walkedRoofOver", beside: "buildingBeside" },
  sign: { over: "signOver", beside: "signBeside" },
  litSign: { over: "signOver", beside: "litSignBeside" },
  walkedSign: { over: "walkedSignOver", beside: "signBeside" },
} as const satisfies Record<Structure["kind"], Record<"over" | "beside", ClearanceSurface>>;

/** What the limits over and beside a structure are filed under. */
export function structureSurfaces(kind: Structure["kind"]): Readonly<Record<"over" | "beside", ClearanceSurface>> {
  return surfaces[kind];
}

/** Least height of the line over the top of a structure, along all of it, all cases. */
export const structureClearance = defineQuery("structure-clearance", (plant, structureId): Clearance => {
  const { spanId, offsetM, lengthM, heightM } = plant.rowOf("structure", structureId);
  const line = lineHeight(plant, spanId);
  const ground = groundLine(plant, spanId);
  if (line.kind === "unknown") return line;
  if (ground.kind === "unknown") return ground;
  const inSpan = (atM: number) => Math.min(Math.max(atM, 0), line.lengthM);
  const [nearM, farM] = [inSpan(offsetM - lengthM / 2), inSpan(offsetM + lengthM / 2)];
  return clearanceOver(line, surfaceOf(ground, heightM), [[nearM, farM]]);
});

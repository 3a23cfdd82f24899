import type { ClearanceSurface } from "../model/catalogueRows.ts";
import type { ClearanceLimit, Structure } from "../model/tables.ts";
import {
  type BindingCase,
  bindingCases,
  type Clearance,
  clearanceLimitFor,
  clearanceOver,
  type Passage,
  surfaceOf,
  type Unknown,
} from "./clearance.ts";
import { groundLine } from "./groundLine.ts";
import { lineHeight } from "./lineHeight.ts";
import { defineQuery, type Plant } from "./plant.ts";

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

/** All of a structure that lies in its span, at the height of its top. */
export function structurePassage(plant: Plant, structureId: string): Passage | Unknown {
  const { spanId, offsetM, lengthM, heightM } = plant.rowOf("structure", structureId);
  const ground = groundLine(plant, spanId);
  if (ground.kind === "unknown") return ground;
  const spanM = plant.rowOf("span", spanId).lengthM;
  const inSpan = (atM: number) => Math.min(Math.max(atM, 0), spanM);
  const [nearM, farM] = [inSpan(offsetM - lengthM / 2), inSpan(offsetM + lengthM / 2)];
  return { kind: "known", over: surfaceOf(ground, heightM), stretches: [[nearM, farM]] };
}

/** Least height of the line over the top of a structure, along all of it, all cases. */
export const structureClearance = defineQuery("structure-clearance", (plant, structureId): Clearance => {
  const line = lineHeight(plant, plant.rowOf("structure", structureId).spanId);
  if (line.kind === "unknown") return line;
  const passage = structurePassage(plant, structureId);
  return passage.kind === "unknown" ? passage : clearanceOver(line, passage);
});

/** A structure beside the line: how far, against what, and how high the line hangs over it besides. */
export type Beside = {
  /** Level distance from the line to its nearest face, m. */
  readonly besideM: number;
  /** Undefined where the clearance set has none. */
  readonly limit: ClearanceLimit | undefined;
  /** Of the cases that bind over its top the one with the least to spare; null where none binds or nobody can tell. */
  readonly over: BindingCase | null;
};

/** A structure that the line passes beside; null where it passes over it. */
export const structureBeside = defineQuery("structure-beside", (plant, structureId): Beside | null => {
  const { kind, besideM } = plant.rowOf("structure", structureId);
  if (besideM === 0) return null;
  const { over, beside } = structureSurfaces(kind);
  const clearance = structureClearance(plant, structureId);
  const [worst] = clearance.kind === "known" ? bindingCases(plant, over, clearance.byCase) : [];
  return { besideM, limit: clearanceLimitFor(plant, beside), over: worst ?? null };
});

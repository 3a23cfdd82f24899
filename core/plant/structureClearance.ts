import type { ClearanceSurface } from "../model/clearanceRows.ts";
import type { ClearanceLimit, Structure } from "../model/tables.ts";
import {
  type BindingCase,
  bindingCases,
  type Clearance,
  clearanceLimitFor,
  clearanceOver,
  type Hung,
  type Passage,
  surfaceOf,
  type Unknown,
} from "./clearance.ts";
import { groundAtM, groundLine } from "./groundLine.ts";
import { type LineHeight, lineHeight } from "./lineHeight.ts";
import { defineQuery, type Plant } from "./plant.ts";

const surfaces = {
  building: { over: "buildingOver", beside: "buildingBeside", under: "buildingUnder" },
  walkedRoof: { over: "walkedRoofOver", beside: "buildingBeside", under: "buildingUnder" },
  sign: { over: "signOver", beside: "signBeside", under: "signUnder" },
  litSign: { over: "signOver", beside: "litSignBeside", under: "litSignUnder" },
  groundedLitSign: { over: "signOver", beside: "groundedLitSignBeside", under: "litSignUnder" },
  walkedSign: { over: "walkedSignOver", beside: "signBeside", under: "signUnder" },
  chimney: { over: "chimneyOver", beside: "chimneyBeside", under: "signUnder" },
} as const satisfies Record<Structure["kind"], Record<"over" | "beside" | "under", ClearanceSurface>>;

/** What the limits over, beside and under a structure are filed under. */
export function structureSurfaces(
  kind: Structure["kind"],
): Readonly<Record<"over" | "beside" | "under", ClearanceSurface>> {
  return surfaces[kind];
}

/** All of a structure that lies in its span, at the height of its top. */
export function structurePassage(plant: Plant, structureId: string): Passage | Unknown {
  const { spanId, heightM } = plant.rowOf("structure", structureId);
  const ground = groundLine(plant, spanId);
  if (ground.kind === "unknown") return ground;
  return { kind: "known", over: surfaceOf(ground, heightM), stretches: stretchesOf(plant, structureId) };
}

/**
 * All of a structure that lies in its span, at its underside and upside down, for a line turned over by `upsideDown`: what hangs between
 * the two is then a clearance as any other. Null where it stands on the ground.
 */
export function undersidePassage(plant: Plant, structureId: string): Passage | Unknown | null {
  const { spanId, bottomM } = plant.rowOf("structure", structureId);
  if (bottomM === null) return null;
  const ground = groundLine(plant, spanId);
  if (ground.kind === "unknown") return ground;
  const over = { ...surfaceOf(ground), heightAtM: (atM: number) => -(groundAtM(ground, atM) + bottomM) };
  return { kind: "known", over, stretches: stretchesOf(plant, structureId) };
}

/** The strand of a line, upside down: as far below the datum as it is above. */
export function upsideDown(line: Extract<LineHeight, { kind: "known" }>): Hung {
  return {
    ...line,
    undersideM: (offsetM, condition) => -(line.undersideM(offsetM, condition) + line.underStrandM),
  };
}

/** Least height of the line over the top of a structure, along all of it, all cases. */
export const structureClearance = defineQuery("structure-clearance", (plant, structureId): Clearance => {
  const line = lineHeight(plant, plant.rowOf("structure", structureId).spanId);
  if (line.kind === "unknown") return line;
  const passage = structurePassage(plant, structureId);
  return passage.kind === "unknown" ? passage : clearanceOver(line, passage);
});

/** Least height of a structure's underside over our strand, along all of it, all cases; null where it stands on the ground. */
export const undersideClearance = defineQuery("underside-clearance", (plant, structureId): Clearance | null => {
  const line = lineHeight(plant, plant.rowOf("structure", structureId).spanId);
  if (line.kind === "unknown") return line;
  const passage = undersidePassage(plant, structureId);
  return passage === null || passage.kind === "unknown" ? passage : clearanceOver(upsideDown(line), passage);
});

/** A structure beside the line: how far, against what, and how the line passes over or under it besides. */
export type Beside = {
  /** Level distance from the line to its nearest face, m. */
  readonly besideM: number;
  /** Undefined where the clearance set has none. */
  readonly limit: ClearanceLimit | undefined;
  /** Of the cases that bind over its top the one with the least to spare; null where none binds or nobody can tell. */
  readonly over: BindingCase | null;
  /** The same under its underside; null also where it stands on the ground. */
  readonly under: BindingCase | null;
};

/** A structure that the line passes beside; null where it passes over it. */
export const structureBeside = defineQuery("structure-beside", (plant, structureId): Beside | null => {
  const { kind, besideM } = plant.rowOf("structure", structureId);
  if (besideM === 0) return null;
  const { over, under, beside } = structureSurfaces(kind);
  const worst = (surface: ClearanceSurface, clearance: Clearance | null): BindingCase | null =>
    (clearance?.kind === "known" ? bindingCases(plant, surface, clearance)[0] : null) ?? null;
  return {
    besideM,
    limit: clearanceLimitFor(plant, beside),
    over: worst(over, structureClearance(plant, structureId)),
    under: worst(under, undersideClearance(plant, structureId)),
  };
});

function stretchesOf(plant: Plant, structureId: string): Passage["stretches"] {
  const { spanId, offsetM, lengthM } = plant.rowOf("structure", structureId);
  const spanM = plant.rowOf("span", spanId).lengthM;
  const inSpan = (atM: number) => Math.min(Math.max(atM, 0), spanM);
  return [[inSpan(offsetM - lengthM / 2), inSpan(offsetM + lengthM / 2)]];
}

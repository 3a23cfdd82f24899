import type { Plant } from "../plant/plant.ts";
import { type Basis, catalogueBasis, companySetting, type Subject } from "../rules/rule.ts";

/** Where the row an input is read from has its figures; null for what was surveyed, drawn or worked out. */
export function inputBasis(plant: Plant, from: Subject | null): Basis | null {
  if (!from) return null;
  if (from.table === "settings") return companySetting("");
  const row = plant.row(from.table, from.id);
  return row && "basisDocument" in row ? catalogueBasis(row) : null;
}

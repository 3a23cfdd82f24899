import { spanName } from "../../plant/names.ts";
import type { Plant } from "../../plant/plant.ts";
import { spanClearance } from "../../plant/spanClearance.ts";
import { spanSag } from "../../plant/spanSag.ts";
import { formatLength } from "../../units/formatLength.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import { lengthCell } from "../paper/figure.ts";
import { lengthUnit, sagUnit } from "../paper/quantityText.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import { clearanceText, overText } from "../profile/profileWords.ts";
import { caseWords } from "../tradeWords.ts";

/** Columns of the form for spans. */
export function spanColumns(system: UnitSystem): readonly Column[] {
  const [unit, sag, temperature] = [lengthUnit(system), sagUnit(system), system === "us" ? "°F" : "°C"];
  return [
    { heading: "Span", share: 38 },
    { heading: "Length", unit, share: 18, align: "right" },
    { heading: "Length measured", unit, share: 26 },
    { heading: "Strung sag, computed", share: 28, align: "right" },
    { heading: "Sag measured", unit: sag, share: 28 },
    { heading: "At temperature", over: "Sag", unit: temperature, share: 26 },
    { heading: "Least to spare over", share: 56 },
    { heading: "Clearance, computed", share: 30, align: "right" },
    { heading: "Case", share: 22 },
    { heading: "Clearance measured", share: 32 },
    { heading: "At temperature", over: "Clearance", unit: temperature, share: 26 },
    { heading: "Left open, remarks", share: 56 },
  ];
}

/** What was computed for a span, beside the fields for what was measured in it. */
export function closeoutSpanRow(plant: Plant, spanId: string): TableRow {
  const system = plant.settings().unitSystem;
  const sag = spanSag(plant, spanId);
  const clearance = spanClearance(plant, spanId);
  return {
    cells: [
      spanName(plant, spanId),
      lengthCell(plant.rowOf("span", spanId).lengthM, system),
      "",
      sag.kind === "unknown" ? "not known" : formatLength(sag.stringing.sagM, system, "sag"),
      "",
      "",
      ...(clearance
        ? [overText(plant, clearance), clearanceText(clearance.measuredM, system), caseWords[clearance.condition]]
        : ["not known", "", ""]),
      "",
      "",
      "",
    ],
  };
}

import { stateInCase } from "../plant/furtherStates.ts";
import type { Plant } from "../plant/plant.ts";
import { rowSpanIds, rowTogether } from "../plant/strandRow.ts";
import { formatForce } from "../units/formatForce.ts";
import { formatLength } from "../units/formatLength.ts";
import { derivedInput, plainInput, saidInput } from "./inputs.ts";
import { type CaseHung, stateWords, type TensionFacts, type TensionFormula } from "./tensionFacts.ts";

/** The tension of a row whose strand slips, as strung: its ruling span has the stringing sag. */
export function rowStringing(plant: Plant, spanId: string, facts: TensionFacts): TensionFormula {
  const { sag, section, ofSection, units, stringingSag } = facts;
  const wholeN = sag.stringing.horizontalN * 8 * section.stringingSagFrac;
  return {
    words:
      "Weight of the ruling span of the row, over eight times the stringing sag as a part of it. Each span then sags as the square of its length.",
    formula: "W / (8 · f)",
    inputs: [
      saidInput(
        ["W", `weight of the ruling span ${rowWords(plant, spanId, facts)}`],
        [wholeN, "N"],
        formatForce(wholeN, units),
        ofSection,
      ),
      stringingSag,
    ],
  };
}

/** The tension of a row whose strand slips, in a later state. */
export function rowChanged(
  plant: Plant,
  spanId: string,
  { part, hung }: CaseHung,
  facts: TensionFacts,
): TensionFormula | null {
  const { section, ofSection, units } = facts;
  const together = rowTogether(plant, rowSpanIds(plant, spanId, section), stateInCase(plant, spanId, part));
  if (!together) return null;
  const mean = (symbol: string, name: string, valueN2: number) =>
    derivedInput([symbol, name], [valueN2, "N²"], units, ofSection);
  return {
    words: `${stateWords} the row; put in, the formula gives H back. For level spans under one load Q is w² R² / 12, R being the ruling span.`,
    formula: "√(Q · K / (2 · (H + Q0 · K / (2 · H0²) + b · a · (T - T0) · K - H0)))",
    inputs: [
      mean("Q", `mean square of the shear, ruling span ${rowWords(plant, spanId, facts)}`, together.toN2),
      mean("Q0", "the same at stringing", together.fromN2),
      plainInput(["b", "part that warmth lengthens, less than 1 on slopes"], together.warmthFrac, "", ofSection),
      ...facts.state(part, hung),
    ],
  };
}

/** "156 ft, of 3 spans". */
function rowWords(plant: Plant, spanId: string, { sag, section, units }: TensionFacts): string {
  const together = rowTogether(plant, rowSpanIds(plant, spanId, section), stateInCase(plant, spanId, "hot"));
  return `${formatLength(together?.rulingSpanM ?? sag.lengthM, units, "span")}, of ${sag.rowCount} spans`;
}

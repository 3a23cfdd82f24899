import { cablePath, sheathLength } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { lengthInput } from "./inputs.ts";

/** From here on an offset reads in feet and inches: 156 ft, not 1872 in. */
const farM = 3.048;

/** Distance of a terminal along the route from the feed end of its cable. */
export function explainTerminalStation(
  plant: Plant,
  terminalId: string,
  units: UnitSystem,
): Explanation | NoExplanation {
  const { name, cableId, spanId, offsetM } = plant.rowOf("terminal", terminalId);
  const title = `Terminal ${name} from the feed end`;
  const step = cablePath(plant, cableId).stepBySpan.get(spanId);
  if (!step) return { kind: "unknown", title, why: "Its cable does not pass the span it hangs in." };
  const stationM = step.startM + (step.reversed ? step.lengthM - offsetM : offsetM);
  return {
    kind: "known",
    title,
    words: step.reversed
      ? "Spans the cable has passed, and the rest of the span it hangs in: the cable runs against the span's own direction."
      : "Spans the cable has passed, and the distance from the span's first pole.",
    formula: step.reversed ? "b + L - x" : "b + x",
    inputs: [
      lengthInput(["b", "spans of the cable before this one"], step.startM, [units, "span"], ["cable", cableId]),
      ...(step.reversed ? [lengthInput(["L", "span length"], step.lengthM, [units, "span"], ["span", spanId])] : []),
      lengthInput(
        ["x", "terminal from the span's first pole"],
        offsetM,
        [units, offsetM < farM ? "offset" : "height"],
        ["terminal", terminalId],
      ),
    ],
    result: { symbol: "station", value: stationM, unit: "m", text: formatLength(stationM, units, "span") },
    limit: null,
    source: "sum along the route",
    assumed: ["Coils are not in it: this is distance on the ground, not sheath."],
  };
}

/** Sheath of a cable: spans and coils. */
export function explainSheath(plant: Plant, cableId: string, units: UnitSystem): Explanation {
  const { name, reelLengthM, cableTypeId } = plant.rowOf("cable", cableId);
  const { spansM, coilsM, totalM } = sheathLength(plant, cableId);
  const type = plant.rowOf("cableType", cableTypeId);
  return {
    kind: "known",
    title: `Sheath of cable ${name}`,
    words: "Spans the cable runs through, and what waits in its coils.",
    formula: "p + q",
    inputs: [
      lengthInput(
        ["p", `spans, ${cablePath(plant, cableId).steps.length} of them`],
        spansM,
        [units, "span"],
        ["cable", cableId],
      ),
      lengthInput(
        ["q", `coils, ${plant.where("slack", "cableId", cableId).length} of them`],
        coilsM,
        [units, "span"],
        ["cable", cableId],
      ),
    ],
    result: { symbol: "sheath", value: totalM, unit: "m", text: formatLength(totalM, units, "span") },
    limit: {
      words: "Length of the reel it is cut from",
      value: reelLengthM,
      text: formatLength(reelLengthM, units, "span"),
      basis: {
        document: type.basisDocument,
        clause: type.basisClause,
        edition: type.basisEdition,
        mark: type.basisMark,
      },
    },
    source: "sum along the cable",
    assumed: ["Sag adds a few millimetres to a span and is not in it."],
  };
}

import { type ClearanceCase, clearanceCases } from "../../../core/model/clearanceRows.ts";
import { furtherCases, type StrengthCase, strengthCases } from "../../../core/model/loadRows.ts";
import { spanName } from "../../../core/plant/names.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { spanClearance } from "../../../core/plant/spanClearance.ts";
import { spanSag } from "../../../core/plant/spanSag.ts";
import { governingCase, isChosen, stateIn, strengthLimitFor } from "../../../core/plant/strength.ts";
import { surfaceWords } from "../../canvas/crossingMarks.ts";
import { computed, explained, told } from "./builders.ts";
import type { CellValue, Column } from "./column.ts";
import { forceMeasure, heightMeasure, plainMeasure, runMeasure, shortMeasure } from "./measures.ts";

const caseWords: Readonly<Record<StrengthCase, string>> = {
  stringing: "strung",
  hot: "hot",
  iced: "iced",
  loaded: "loaded",
  extremeWind: "extreme wind",
  extremeIce: "extreme ice",
  worker: "with worker",
};
const clearanceFigures = { crossing: "clearance", structure: "structureClearance", span: "groundClearance" } as const;
const percent = plainMeasure("%", 1, 0.01);

/** The steel of each span: tension at the supports, its share of the breaking strength, sag, and the least clearance. */
export const steelColumns: readonly Column[] = [
  told("name", "Span", spanName, 170),
  told("section", "Strand", (plant, id) => {
    const { strandSectionId } = plant.rowOf("span", id);
    return strandSectionId === null ? "" : plant.rowOf("strandSection", strandSectionId).name;
  }),
  computed("length", "Length", runMeasure, (plant, id) => plant.rowOf("span", id).lengthM),
  ...strengthCases.map((part) =>
    inCase(part, [`tension ${part}`, `Tension ${caseWords[part]}`], supportN(part), "supportTension"),
  ),
  ...strengthCases.map((part) =>
    inCase(part, [`share ${part}`, `Of breaking ${caseWords[part]}`], shareFrac(part), "tensionShare"),
  ),
  computed(
    "allowed",
    "Allowed loaded",
    percent,
    (plant) => strengthLimitFor(plant, "strand", "loaded")?.limitFrac ?? null,
    140,
  ),
  told("governs", "Governing case", (plant, id) => {
    const governing = governingCase(plant, id);
    return governing ? caseWords[governing.condition] : "";
  }),
  computed(
    "used",
    "Of what it allows",
    percent,
    (plant, id) => {
      const governing = governingCase(plant, id);
      return governing && governing.tensionN / governing.allowedN;
    },
    160,
  ),
  ...clearanceCases.map((part) =>
    explained(computed(`sag ${part}`, `Sag ${caseWords[part]}`, shortMeasure, sagM(part), 120), (_, id) => ({
      figure: "sag",
      id,
      part,
    })),
  ),
  explained(
    computed(
      "least",
      "Least clearance",
      heightMeasure,
      (plant, id) => spanClearance(plant, id)?.measuredM ?? null,
      150,
    ),
    (plant, id) => {
      const least = spanClearance(plant, id);
      return least && { figure: clearanceFigures[least.over.table], id: least.over.id, part: least.condition };
    },
  ),
  told("over", "Over", overWords),
  told("case", "In which case", (plant, id) => {
    const least = spanClearance(plant, id);
    return least ? caseWords[least.condition] : "";
  }),
  computed("limit", "Limit there", heightMeasure, (plant, id) => spanClearance(plant, id)?.limit?.limitM ?? null, 120),
];

/** A figure of strength in a case; one the settings may ask for is a column only where they do. */
function inCase(
  part: StrengthCase,
  [key, heading]: readonly [string, string],
  value: Column["value"],
  figure: "supportTension" | "tensionShare",
): Column {
  const isFurther = furtherCases.some((one) => one === part);
  const measure = figure === "supportTension" ? forceMeasure : percent;
  const widthPx = isFurther ? 215 : 160;
  const column = explained(computed(key, heading, measure, value, widthPx), (_, id) => ({ figure, id, part }));
  if (!isFurther) return column;
  return { ...column, isAsked: (settings) => isChosen(settings, part) };
}

function supportN(part: StrengthCase) {
  return (plant: Plant, id: string): CellValue => stateIn(plant, id, part)?.supportN ?? null;
}

function shareFrac(part: StrengthCase) {
  return (plant: Plant, id: string): CellValue => {
    const sag = spanSag(plant, id);
    const state = stateIn(plant, id, part);
    return sag.kind === "known" && state ? state.supportN / sag.tension.breakingN : null;
  };
}

function sagM(part: ClearanceCase) {
  return (plant: Plant, id: string): CellValue => {
    const sag = spanSag(plant, id);
    return sag.kind === "known" ? sag[part].sagM : null;
  };
}

function overWords(plant: Plant, id: string): string {
  const least = spanClearance(plant, id);
  if (!least) return "";
  if (least.over.table === "span") return "ground";
  if (least.over.table === "structure") return plant.rowOf("structure", least.over.id).name || "structure";
  const { name, surface } = plant.rowOf("crossing", least.over.id);
  return name || surfaceWords[surface];
}

import { structureClearance, undersideClearance } from "../../../core/plant/structureClearance.ts";
import { structureWords } from "../../panels/words.ts";
import { choice, computed, explained, figures, words } from "./builders.ts";
import type { Column } from "./column.ts";
import { heightMeasure, runMeasure } from "./measures.ts";
import { spanOf } from "./spanOf.ts";

const table = "structure";

export const structureColumns: readonly Column[] = [
  spanOf(table),
  words({ table, column: "name" }, "Name"),
  choice({ table, column: "kind" }, "What", structureWords, { widthPx: 160 }),
  figures({ table, column: "offsetM" }, "From first pole", runMeasure, { widthPx: 130 }),
  figures({ table, column: "lengthM" }, "Along the span", runMeasure, { widthPx: 130 }),
  figures({ table, column: "besideM" }, "Beside the line", runMeasure, { widthPx: 130 }),
  choice({ table, column: "side" }, "Side", { left: "left", right: "right" }),
  figures({ table, column: "heightM" }, "Top above ground", heightMeasure, { widthPx: 140 }),
  figures({ table, column: "bottomM" }, "Underside above ground", heightMeasure, {
    widthPx: 170,
    mayBeEmpty: true,
  }),
  explained(
    computed(
      "clearance",
      "Least over it",
      heightMeasure,
      (plant, id) => {
        const clearance = structureClearance(plant, id);
        return clearance.kind === "known" ? clearance.leastM : null;
      },
      130,
    ),
    (plant, id) => {
      const clearance = structureClearance(plant, id);
      return clearance.kind === "known" ? { figure: "structureClearance", id, part: clearance.worstCase } : null;
    },
  ),
  explained(
    computed(
      "underside",
      "Least under it",
      heightMeasure,
      (plant, id) => {
        const clearance = undersideClearance(plant, id);
        return clearance?.kind === "known" ? clearance.leastM : null;
      },
      130,
    ),
    (plant, id) => {
      const clearance = undersideClearance(plant, id);
      return clearance?.kind === "known" ? { figure: "undersideClearance", id, part: clearance.worstCase } : null;
    },
  ),
];

import { farPoleId } from "../plant/geometry.ts";
import { hangsFree } from "../plant/hanging.ts";
import type { Plant } from "../plant/plant.ts";
import { terminalHang } from "../plant/terminalView.ts";
import { type Fix, type Rule, routeItself } from "./rule.ts";
import { moveTerminalFix } from "./terminalFix.ts";

export const terminalNotAllowed: Rule = {
  id: "terminal-not-allowed",
  title: "No terminal hangs beside a pole that allows none",
  compares: "The pole a terminal hangs beside, against whether a terminal is allowed there.",
  severity: "error",
  basis: routeItself,
  each: "terminal",
  *check(plant, id) {
    const { poleId } = terminalHang(plant, id);
    const pole = plant.rowOf("pole", poleId);
    if (pole.terminalAllowed) return;
    yield {
      subjects: [
        { table: "terminal", id },
        { table: "pole", id: poleId },
      ],
      message: `Terminal ${plant.rowOf("terminal", id).name} hangs beside pole ${pole.tag}, where none is allowed.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: farPoleFix(plant, id, poleId),
    };
  },
};

function farPoleFix(plant: Plant, terminalId: string, poleId: string): readonly Fix[] {
  const { spanId, terminalModelId, name } = plant.rowOf("terminal", terminalId);
  const { standoffM } = plant.settings();
  const { lengthM, fromPoleId } = plant.rowOf("span", spanId);
  const far = plant.rowOf("pole", farPoleId(plant, spanId, poleId));
  const offsetM = fromPoleId === poleId ? lengthM - standoffM : standoffM;
  const halfM = plant.rowOf("terminalModel", terminalModelId).lengthM / 2;
  const moved = { table: "terminal", id: terminalId, name, offsetM, halfM, terminalId } as const;
  if (!far.terminalAllowed || standoffM >= lengthM / 2 || !hangsFree(plant, spanId, moved)) return [];
  return moveTerminalFix(plant, terminalId, `Move to pole ${far.tag}`, spanId, offsetM);
}

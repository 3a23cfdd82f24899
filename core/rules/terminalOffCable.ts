import { cablesInSpan } from "../plant/cablePath.ts";
import { spansAtPole } from "../plant/geometry.ts";
import { hangsFree } from "../plant/hanging.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { terminalHang } from "../plant/terminalView.ts";
import { type Fix, type Rule, routeItself } from "./rule.ts";
import { moveTerminalFix } from "./terminalFix.ts";

export const terminalOffCable: Rule = {
  id: "terminal-off-cable",
  title: "Terminal hangs where its cable passes",
  compares: "The span a terminal hangs in, against the spans its cable passes through.",
  severity: "error",
  basis: routeItself,
  each: "terminal",
  *check(plant, id) {
    const { name, cableId, spanId } = plant.rowOf("terminal", id);
    if (cablesInSpan(plant, spanId).includes(cableId)) return;
    yield {
      subjects: [
        { table: "terminal", id },
        { table: "cable", id: cableId },
      ],
      message: `Terminal ${name} hangs in span ${spanName(plant, spanId)}, where its cable ${plant.rowOf("cable", cableId).name} does not pass.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: samePoleFix(plant, id),
    };
  },
};

/** The side of the same pole where the cable does pass. */
function samePoleFix(plant: Plant, terminalId: string): readonly Fix[] {
  const { name, cableId, terminalModelId } = plant.rowOf("terminal", terminalId);
  const { poleId } = terminalHang(plant, terminalId);
  const { standoffM } = plant.settings();
  const halfM = plant.rowOf("terminalModel", terminalModelId).lengthM / 2;
  for (const spanId of spansAtPole(plant, poleId)) {
    const { lengthM, fromPoleId } = plant.rowOf("span", spanId);
    const offsetM = fromPoleId === poleId ? standoffM : lengthM - standoffM;
    const moved = { table: "terminal", id: terminalId, name, offsetM, halfM, terminalId } as const;
    if (!cablesInSpan(plant, spanId).includes(cableId) || !hangsFree(plant, spanId, moved)) continue;
    return moveTerminalFix(plant, terminalId, `Move to span ${spanName(plant, spanId)}`, spanId, offsetM);
  }
  return [];
}

import { sheathLength } from "../plant/cablePath.ts";
import { type Rule, routeItself } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const cableLongerThanReel: Rule = {
  id: "cable-longer-than-reel",
  title: "A cable with its coils fits on its reel",
  compares: "The sheath of a cable, spans and coils together, against the length on its reel.",
  severity: "error",
  basis: { ...routeItself, clause: "sheath length on the cable's reel" },
  each: "cable",
  *check(plant, id) {
    const { name, reelLengthM } = plant.rowOf("cable", id);
    const { totalM } = sheathLength(plant, id);
    if (!isOver(totalM, reelLengthM)) return;
    yield {
      subjects: [{ table: "cable", id }],
      message: `Cable ${name} with its coils is longer than its reel.`,
      measured: totalM,
      limit: reelLengthM,
      unit: "m",
      fixes: [],
    };
  },
};

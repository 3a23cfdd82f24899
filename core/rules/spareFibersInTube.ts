import { tubeOf, usesOfCable } from "../plant/fiberView.ts";
import { companySetting, type Rule } from "./rule.ts";

export const spareFibersInTube: Rule = {
  id: "spare-fibers-in-tube",
  title: "A tube in use keeps spare fibers",
  compares: "The fibers nothing uses in each tube in use of a cable, against the spare fibers of the settings.",
  severity: "warning",
  basis: companySetting("spareFiberPerTubeCount"),
  each: "cable",
  *check(plant, id) {
    const { name, cableTypeId } = plant.rowOf("cable", id);
    const { fiberCount, fibersPerTube } = plant.rowOf("cableType", cableTypeId);
    const limit = plant.settings().spareFiberPerTubeCount;
    const usedByTube = new Map<number, Set<number>>();
    for (const useId of usesOfCable(plant, id)) {
      const { fiber } = plant.rowOf("fiberUse", useId);
      if (fiber > fiberCount) continue;
      const { tube } = tubeOf(plant, id, fiber);
      usedByTube.set(tube, (usedByTube.get(tube) ?? new Set()).add(fiber));
    }
    const spares = [...usedByTube].map(([tube, used]) => {
      const tubeCount = Math.min(fibersPerTube, fiberCount - (tube - 1) * fibersPerTube);
      return { tube, spare: tubeCount - used.size };
    });
    const short = spares.filter((one) => one.spare < limit).sort((a, b) => a.tube - b.tube);
    if (short.length === 0) return;
    yield {
      subjects: [{ table: "cable", id }],
      message: `Cable ${name} keeps too few spare fibers in tube ${short.map((one) => one.tube).join(", ")}.`,
      measured: Math.min(...short.map((one) => one.spare)),
      limit,
      unit: "",
      fixes: [],
    };
  },
};

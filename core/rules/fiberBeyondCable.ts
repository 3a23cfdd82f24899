import { otherFiberFix } from "./giveFiberFix.ts";
import { catalogueBasis, type Fix, type Rule, routeItself } from "./rule.ts";

export const fiberBeyondCable: Rule = {
  id: "fiber-beyond-cable",
  title: "Fibers in use are in the cable",
  compares: "The number of a fiber in use, against the fibers its cable has.",
  severity: "error",
  basis: routeItself,
  each: "fiberUse",
  *check(plant, id) {
    const use = plant.rowOf("fiberUse", id);
    const cable = plant.rowOf("cable", use.cableId);
    const type = plant.rowOf("cableType", cable.cableTypeId);
    if (use.fiber <= type.fiberCount) return;
    const larger = plant
      .all("cableType")
      .map((typeId) => plant.rowOf("cableType", typeId))
      .filter((one) => one.fiberCount >= use.fiber && one.fibersPerTube === type.fibersPerTube)
      .sort((a, b) => a.fiberCount - b.fiberCount)[0];
    const resize: readonly Fix[] = larger
      ? [
          {
            label: `Take the cable with ${larger.fiberCount} fibers`,
            command: "cable.resize",
            input: { cableId: cable.id, cableTypeId: larger.id },
          },
        ]
      : [];
    yield {
      subjects: [
        { table: "fiberUse", id },
        { table: "cable", id: cable.id },
      ],
      message: `Fiber ${use.fiber} is used of cable ${cable.name}, which has fewer.`,
      measured: use.fiber,
      limit: type.fiberCount,
      unit: "",
      fixes: [...otherFiberFix(plant, use), ...resize],
      basis: catalogueBasis(type),
    };
  },
};

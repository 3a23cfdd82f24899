import { dropEnds, dropRunM } from "../plant/dropView.ts";
import { segmentsCross } from "../plant/geometry.ts";
import { terminalsNear } from "../plant/near.ts";
import { type Rule, tradePractice } from "./rule.ts";

export const dropsCross: Rule = {
  id: "drops-cross",
  title: "Drops of neighbouring terminals do not cross",
  compares: "The line of a drop as drawn, against the drops of the terminals near it.",
  severity: "note",
  basis: tradePractice("a living unit is served from the side it lies on"),
  each: "drop",
  *check(plant, id) {
    const { terminalId, livingUnitId } = plant.rowOf("drop", id);
    const mine = dropEnds(plant, id);
    const neighbours = terminalsNear(plant, mine.from, dropRunM(plant, id) + plant.settings().dropReachM);
    for (const neighbour of neighbours) {
      if (neighbour.id === terminalId) continue;
      for (const otherId of plant.where("drop", "terminalId", neighbour.id)) {
        if (otherId < id || !segmentsCross(mine, dropEnds(plant, otherId))) continue;
        const other = plant.rowOf("drop", otherId);
        const [address, otherAddress] = [livingUnitId, other.livingUnitId].map(
          (one) => plant.rowOf("livingUnit", one).address,
        );
        yield {
          subjects: [
            { table: "drop", id },
            { table: "drop", id: otherId },
          ],
          message: `The drops to ${address} and ${otherAddress} cross.`,
          measured: null,
          limit: null,
          unit: "",
          fixes: [],
        };
      }
    }
  },
};

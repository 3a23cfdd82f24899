import type { MakeReady } from "../jointpole/makeReady.ts";
import type { Plant } from "../plant/plant.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";

/** What must be done to a pole before our strand goes up, a sentence each, and why no other plan is cheaper. */
export function makeReadyWords(plant: Plant, ready: MakeReady, units: UnitSystem): readonly string[] {
  const ours = (heightM: number) => `Attach our strand at ${formatLength(heightM, units, "height")}`;
  switch (ready.kind) {
    case "nothing":
      return [];
    case "unknown":
    case "none":
      return [ready.why];
    case "oursAlone":
      return [`${ours(ready.ourHeightM)}; nobody else has to move.`];
    case "moves": {
      const total = formatLength(ready.totalM, units, "offset");
      const next =
        ready.nextTotalM === null
          ? "no other plan has as few"
          : `the next best as few moves go ${formatLength(ready.nextTotalM, units, "offset")}`;
      return [
        ...ready.moves.map(({ attachmentId, fromM, toM, ownerOnly }) => {
          const { kind, owner } = plant.rowOf("attachment", attachmentId);
          const who = `the ${kind} of ${owner || "an unknown owner"}`;
          const [from, to] = [fromM, toM].map((one) => formatLength(one, units, "height"));
          const warned = ownerOnly ? "; only its owner may move it, by rules that are not in the clearance set" : "";
          return `${toM < fromM ? "Lower" : "Raise"} ${who} from ${from} to ${to}${warned}.`;
        }),
        `${ours(ready.ourHeightM)}.`,
        `Fewest moves first, then least distance: ${ready.moves.length} of others, ${total} in all; ${next}. The company's standards have no price of a move.`,
      ];
    }
  }
}

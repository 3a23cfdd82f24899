import type { Ground } from "./ground.ts";
import type { Layout } from "./layout.ts";
import { lookAround, makeMove, noMove, type Tabu } from "./moves.ts";

/**
 * Makes the best shift or swap of each unit in turn as long as any lowers the fined cost.
 *
 * @returns whether any did
 */
export function descend(ground: Ground, layout: Layout, fine: number, tabu: Tabu): boolean {
  const { unitCount } = ground.graph;
  let any = false;
  // ends once every unit since the last move has been tried
  for (let tried = 0, unit = 0; tried < unitCount && !ground.stopped(); tried += 1, unit = (unit + 1) % unitCount) {
    const move = noMove();
    lookAround(ground, layout, fine, tabu, unit, 0, move);
    if (move.change >= -1e-7) continue;
    makeMove(ground.graph, layout, move);
    any = true;
    tried = -1;
  }
  return any;
}

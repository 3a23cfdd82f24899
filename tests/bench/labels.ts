import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { composeSet } from "../../core/sheets/composeSet.ts";
import type { Figures } from "./measure.ts";

const poleCounts = [250, 500, 1000, 2000] as const;

/**
 * How the time of drawing strand plans, nearly all of it placing labels, grows with the number of labels: each figure is the growth
 * from one route to one twice as long over that of n log n, so 1 or less is no faster. Times are those of the processor.
 *
 * @param routeOf  a route with this many poles
 */
export function benchLabels(routeOf: (poleCount: number) => Route): Figures {
  measure(routeOf(poleCounts[0])); // the first run waits for the compiler
  const measured = poleCounts.map((poleCount) => measure(routeOf(poleCount)));
  const grown = measured.slice(1).map(({ labelCount, ms }, index): [string, number] => {
    const before = measured[index] ?? { labelCount, ms };
    const [poles, twice] = [poleCounts[index], poleCounts[index + 1]];
    const expected = (labelCount * Math.log(labelCount)) / (before.labelCount * Math.log(before.labelCount));
    return [`labels${poles}To${twice}OverNLogN`, ms / before.ms / expected];
  });
  return Object.fromEntries(grown);
}

function measure(route: Route): { readonly labelCount: number; readonly ms: number } {
  const plant = openPlant(route);
  const start = process.cpuUsage();
  const { sheets } = composeSet(plant, [], { kinds: ["plan"] });
  const { user } = process.cpuUsage(start);
  const labelCount = sheets.reduce((sum, one) => sum + one.marks.filter((mark) => mark.kind === "text").length, 0);
  return { labelCount, ms: user / 1000 };
}

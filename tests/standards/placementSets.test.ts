import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { searchGeneral } from "../../core/placement/general/searchGeneral.ts";
import { readSet } from "./placementSets.ts";

const folder = join(import.meta.dirname, "../fixtures/placement/published");
const known = readFileSync(join(folder, "optima.csv"), "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => line.split(",") as [set: string, instance: string, optimum: string]);

describe("published instances, by origin in the folder of the fixtures", () => {
  test.each(known)("%s %s: the published optimum %s is found and proven", (set, instance, optimum) => {
    const problem = readSet(set, readFileSync(join(folder, set, `${instance}.txt`), "utf8"));
    const found = searchGeneral(problem, { elapsedS: () => 0, stopped: () => false }, { seed: 1, gap: 0 });
    // the orlib optima are printed to the cent
    expect(found?.cost).toBeCloseTo(Number(optimum), 1);
    expect(found?.bound).toBe(found?.cost);
  });

  test("pmedcap p20, ten medians of a hundred places nine tenths full: the published optimum 1005 is found", () => {
    const problem = readSet("pmedcap", readFileSync(join(folder, "pmedcap", "p20.txt"), "utf8"));
    // the proof is far off; steps are counted, so that the end is the same on any machine
    let asked = 0;
    let cost = Number.POSITIVE_INFINITY;
    const watch = {
      elapsedS: () => 0,
      stopped: () => {
        asked += 1;
        return cost <= 1005 || asked > 40_000;
      },
      better: (found: { readonly cost: number }) => {
        cost = found.cost;
      },
    };
    expect(searchGeneral(problem, watch, { seed: 1, gap: 0 })?.cost).toBe(1005);
  });
});

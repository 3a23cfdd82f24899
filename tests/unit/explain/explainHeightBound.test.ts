import { describe, expect, it } from "vitest";
import { explain } from "../../../core/explain/explain.ts";
import { explainRange } from "../../../core/explain/explainRange.ts";
import type { FigureRef } from "../../../core/explain/explanation.ts";
import type { Route } from "../../../core/model/route.ts";
import { crossingClearance } from "../../../core/plant/clearance.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { poleSeparation } from "../../../core/plant/separation.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { worked } from "./worked.ts";

const route = changed(smallRoute(), "crossing", "crossing-1", { surfaceM: 99.2 });

function everyEnd(on: Route, poleId = "pole-2"): FigureRef[] {
  const range = explainRange(openPlant(on), poleId, "us");
  if (range.kind === "unknown") throw new Error(range.why);
  return range.bounds.flatMap(({ key, ends }) =>
    ends.map(({ end }): FigureRef => ({ figure: "heightBound", id: poleId, bound: key, part: end })),
  );
}

function told(ref: FigureRef, on = route) {
  const told = explain(openPlant(on), ref, "us");
  if (told?.kind !== "known") throw new Error(told?.why ?? "its row is gone");
  return told;
}

const named = (text: string, on = route): FigureRef => {
  const found = everyEnd(on).find((ref) => ref.figure === "heightBound" && ref.bound.includes(text));
  if (!found) throw new Error(`nothing bars a height for ${text}`);
  return found;
};

describe("an end of the heights for our strand, explained", () => {
  it("comes out of its formula again, whatever sets it", () => {
    const refs = everyEnd(route);
    expect(refs.length).toBeGreaterThan(6);
    for (const ref of refs) {
      const { formula, inputs, result } = told(ref);
      expect(worked(formula, inputs), JSON.stringify(ref)).toBeCloseTo(result.value, 9);
      for (const { from, symbol } of inputs) if (from) expect(route[from.table].has(from.id), symbol).toBe(true);
    }
  });

  it("over a road takes what lacks there: hung at the end itself, the road keeps just its limit", () => {
    const { result, limit } = told(named("crossing-1"));
    const hung = changed(route, "attachment", "strand-2", { heightM: result.value });
    const over = crossingClearance(openPlant(hung), "crossing-1");
    if (over.kind === "unknown") throw new Error(over.why);
    const least = Math.min(...Object.values(over.byCase));
    expect(least).toBeCloseTo(limit?.value ?? Number.NaN, 9);
  });

  it("under the neutral is its height less what must be kept", () => {
    const { formula, result, limit } = told(named("supply-separation-at-pole neutral-2"));
    expect(formula).toBe("t - K");
    const hung = changed(route, "attachment", "strand-2", { heightM: result.value });
    expect(poleSeparation(openPlant(hung), "neutral-2")?.aboveM).toBeCloseTo(limit?.value ?? Number.NaN, 9);
  });

  it("carries the source of what must be kept", () => {
    expect(told(named("outside-usable-space")).limit?.basis.document).toBe("company setting");
  });

  it("cannot be told once nothing sets it", () => {
    const gone = named("telephone-2");
    const { attachment } = route;
    const on = { ...route, attachment: new Map([...attachment].filter(([id]) => !id.startsWith("telephone"))) };
    expect(explain(openPlant(on), gone, "us")).toMatchObject({
      kind: "unknown",
      why: "Nothing sets this end any more.",
    });
  });
});

describe("the total of the moves of others, explained", () => {
  it("is the sum of what each goes", () => {
    let full = changed(smallRoute(), "attachment", "neutral-2", { heightM: 7.0104 });
    full = changed(full, "attachment", "telephone-2", { heightM: 6.096 });
    const { formula, inputs, result } = told({ figure: "makeReadyTotal", id: "pole-2", plan: 0 }, full);
    expect(worked(formula, inputs)).toBeCloseTo(result.value, 9);
    expect(result.value).toBeGreaterThan(0);
  });

  it("is not there where nobody else has to move", () => {
    expect(explain(openPlant(route), { figure: "makeReadyTotal", id: "pole-2", plan: 0 }, "us")).toMatchObject({
      kind: "unknown",
    });
  });
});

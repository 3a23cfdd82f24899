import { describe, expect, it } from "vitest";
import { belongTogether, gapBetweenM, type Hung, hangsFree, hungInSpan } from "../../../core/plant/hanging.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { withClosure } from "../../fixtures/route/faultyRoutes.ts";

const coil = (offsetM: number): Hung => ({
  table: "slack",
  id: "new",
  name: "a coil",
  offsetM,
  halfM: 0,
  terminalId: null,
});

describe("what hangs in a span", () => {
  it("is listed from the first pole, terminals with half their length", () => {
    expect(hungInSpan(openPlant(smallRoute()), "span-2").map((one) => [one.id, one.offsetM, one.halfM])).toEqual([
      ["coil-1", 0.9144, 0],
      ["terminal-1", 0.9144, 0.1143],
    ]);
    expect(hungInSpan(openPlant(withClosure(smallRoute())), "span-1").map((one) => one.name)).toEqual(["closure S1"]);
  });

  it("is apart by what is free between the ends", () => {
    const [, terminal] = hungInSpan(openPlant(smallRoute()), "span-2");
    if (!terminal) throw new Error("the terminal is gone");
    expect(gapBetweenM(terminal, coil(2))).toBeCloseTo(2 - 0.9144 - 0.1143, 9);
    expect(gapBetweenM(terminal, coil(1))).toBeLessThan(0);
  });

  it("belongs together where it is a terminal and its own coil", () => {
    const [own, terminal] = hungInSpan(openPlant(smallRoute()), "span-2");
    if (!own || !terminal) throw new Error("the terminal is gone");
    expect([
      belongTogether(own, terminal),
      belongTogether(terminal, coil(1)),
      belongTogether(coil(1), coil(1)),
    ]).toEqual([true, false, false]);
  });

  it("leaves room a gap away from everything, inside the span", () => {
    const plant = openPlant(smallRoute());
    expect([1.3, 1.34, 44.99, 45.01].map((offsetM) => hangsFree(plant, "span-2", coil(offsetM)))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });
});

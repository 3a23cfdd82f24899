import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { billOf } from "../../../core/sheets/bill.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";

const basis = { basisDocument: "", basisClause: "", basisEdition: "", basisMark: "practice" } as const;
const route = withRows(smallRoute(), "hardware", [
  { id: "h1", name: "Clamp", unit: "piece", per: "pole", quantity: 2, cost: 0, note: "", ...basis },
  { id: "h2", name: "Grip", unit: "piece", per: "deadEnd", quantity: 1, cost: 0, note: "", ...basis },
  { id: "h3", name: "Lashing wire", unit: "m", per: "strandM", quantity: 1.05, cost: 0, note: "", ...basis },
  { id: "h4", name: "Closure", unit: "piece", per: "closure", quantity: 1, cost: 0, note: "", ...basis },
]);

describe("the bill of materials", () => {
  const lines = new Map(billOf(openPlant(route)).map((one) => [one.item, one]));

  it("counts strand by span, cable by span and coil", () => {
    expect(lines.get("Strand Quarter inch")?.quantity).toBeCloseTo(135, 9);
    expect(lines.get("Cable C1: 48 fibers")?.quantity).toBeCloseTo(135 + 2 * 6.096, 9);
  });

  it("counts hardware by what it goes with, two ends to a strand section", () => {
    expect(lines.get("Clamp")?.quantity).toBe(8);
    expect(lines.get("Grip")?.quantity).toBe(2);
    expect(lines.get("Lashing wire")?.quantity).toBeCloseTo(141.75, 9);
    expect(lines.has("Closure")).toBe(false);
  });

  it("allows for waste on lengths and hardware, not on terminals", () => {
    expect(lines.get("Strand Quarter inch")?.allowanceFrac).toBe(0.05);
    expect(lines.get("Terminal, 8 ports")).toMatchObject({ quantity: 2, allowanceFrac: 0 });
  });
});

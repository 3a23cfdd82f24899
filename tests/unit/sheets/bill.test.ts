import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { billOf } from "../../../core/sheets/bill.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";

const basis = { basisDocument: "", basisClause: "", basisEdition: "", basisMark: "practice" } as const;
const route = withRows(smallRoute(), "hardware", [
  { id: "h1", name: "Clamp", unit: "piece", per: "pole", quantity: 2, cost: 0, note: "", ...basis },
  { id: "h2", name: "Grip", unit: "piece", per: "deadEnd", quantity: 1, cost: 0, note: "", ...basis },
  { id: "h3", name: "Lashing wire", unit: "m", per: "strandM", quantity: 1.05, cost: 0, note: "", ...basis },
  { id: "h4", name: "Closure", unit: "piece", per: "closure", quantity: 1, cost: 0, note: "", ...basis },
]);

describe("the bill with prices", () => {
  const textsOf = (of: Route) =>
    composeSet(openPlant(of), [], { kinds: ["cost"] }).sheets.flatMap(({ marks }) =>
      marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
    );
  const priced = changed(changed(route, "hardware", "h1", { cost: 9.5 }), "hardware", "h3", { cost: 0.25 });

  it("multiplies what is ordered, allowance included, by the price and sums it up", () => {
    // 8 clamps with 5 % are 9; 141.75 m of wire with 5 % are 489 ft at 0.25 a metre
    const texts = textsOf(priced);
    expect(texts).toContain("85.50");
    expect(texts).toContain((Math.round(489 * 0.25 * 0.3048 * 100) / 100).toFixed(2));
    expect(texts.some((text) => text.startsWith("All of it   "))).toBe(true);
  });

  it("says what has no price, and the bill without prices tells none", () => {
    expect(textsOf(priced)).toContain("no price");
    const plain = composeSet(openPlant(priced), [], { kinds: ["bill"] }).sheets.flatMap(({ marks }) => marks);
    expect(plain.some((mark) => mark.kind === "text" && mark.text === "85.50")).toBe(false);
  });
});

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

  it("puts hardware under the assembly it goes into, with how many of those there are", () => {
    expect(lines.get("Clamp")?.assembly).toBe("At each pole with our strand: 4");
    expect(lines.get("Lashing wire")?.assembly).toBe("Along the strand: 443 ft");
    expect(lines.get("Strand Quarter inch")?.assembly).toBe("");
  });

  it("counts guy strand along its slope and an anchor for each guy", () => {
    const guy = { strandTypeId: "strand-quarter", heightM: 6, leadM: 8, directionRad: 0, anchorN: null, note: "" };
    const [pole] = route.pole.keys();
    const guyed = withRows({ ...route, guy: new Map() }, "guy", [{ ...guy, id: "guy-1", poleId: pole ?? "" }]);
    const found = billOf(openPlant(guyed)).filter((one) => one.group === "Guys and anchors");
    expect(found.map((one) => [one.item, one.quantity])).toEqual([
      ["Guy strand Quarter inch", 10],
      ["Anchor with rod", 1],
    ]);
  });

  it("allows for waste on lengths and hardware, not on terminals", () => {
    expect(lines.get("Strand Quarter inch")?.allowanceFrac).toBe(0.05);
    expect(lines.get("Terminal, 8 ports")).toMatchObject({ quantity: 2, allowanceFrac: 0 });
  });
});

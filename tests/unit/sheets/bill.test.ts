import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { cellText } from "../../../core/sheets/paper/figure.ts";
import { billOf } from "../../../core/sheets/schedule/bill.ts";
import { billSchedule, toOrder } from "../../../core/sheets/schedule/billSheet.ts";
import { costSchedule } from "../../../core/sheets/schedule/costSheet.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";

const basis = { basisDocument: "", basisClause: "", basisEdition: "", basisMark: "practice" } as const;
const route = withRows(smallRoute(), "hardware", [
  { id: "h1", name: "Clamp", unit: "piece", per: "pole", quantity: 2, cost: 0, note: "", ...basis },
  { id: "h2", name: "Grip", unit: "piece", per: "deadEnd", quantity: 1, cost: 0, note: "", ...basis },
  { id: "h3", name: "Lashing wire", unit: "m", per: "strandM", quantity: 1.05, cost: 0, note: "", ...basis },
  { id: "h4", name: "Closure", unit: "piece", per: "closure", quantity: 1, cost: 0, note: "", ...basis },
]);

const settingsWith = (of: Route, pieceAllowanceFrac: number) =>
  changed(of, "settings", "settings", { pieceAllowanceFrac });

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
    expect(texts.includes("All of it")).toBe(true);
  });

  it("orders spare terminals where the company keeps some, rounded up to whole ones, and prices them", () => {
    // 2 terminals with 10 % more are 3
    const spared = settingsWith(changed(priced, "terminalModel", "terminal-8", { cost: 250 }), 0.1);
    const texts = textsOf(spared);
    expect(texts).toContain("750.00");
    expect(texts.join(" ")).toContain("terminals and pieces at guys with 10 % more as spares");
    expect(textsOf(settingsWith(spared, 0))).toContain("500.00");
  });

  it("sums no group in which nothing has a price, and says of the whole how many lines have none", () => {
    const headingsOf = (of: Route) =>
      costSchedule(openPlant(of)).rows.flatMap((one) => ("group" in one ? [`${one.group}   ${one.sum ?? ""}`] : []));
    const told = headingsOf(priced);
    expect(told).toContain("At each strand end: 2   no prices");
    expect(told).toContain("At each pole with our strand: 4   85.50");
    expect(told.at(-1)).toMatch(/^All of it {3}[\d,.]+, without 1 line that has no price$/);
    expect(headingsOf(route).at(-1)).toMatch(/, without 3 lines that have no price$/);
    expect(headingsOf(changed(priced, "hardware", "h2", { cost: 1 })).at(-1)).toMatch(/^All of it {3}[\d,.]+$/);
    const drawnAlone = { ...smallRoute(), guy: new Map(), drop: new Map(), terminal: new Map(), cable: new Map() };
    const unpriced = changed(drawnAlone, "strandType", "strand-quarter", { costPerM: 0 });
    expect(headingsOf(unpriced)).toEqual(["Strand and cable   no prices", "All of it   no prices"]);
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

  it("says the kind once of a cable whose name begins with it", () => {
    const named = changed(route, "cable", "cable-1", { name: "Cable 1" });
    expect(billOf(openPlant(named)).map((one) => one.item)).toContain("Cable 1: 48 fibers");
    const likewise = changed(route, "cable", "cable-1", { name: "Cableway" });
    expect(billOf(openPlant(likewise)).map((one) => one.item)).toContain("Cable Cableway: 48 fibers");
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

  it("counts guy strand along its slope, and an anchor of the catalogue's for each guy, once", () => {
    const guy = { strandTypeId: "strand-quarter", heightM: 6, leadM: 8, directionRad: 0, anchorN: null, note: "" };
    const [pole] = route.pole.keys();
    const guyed = withRows({ ...route, guy: new Map() }, "guy", [{ ...guy, id: "guy-1", poleId: pole ?? "" }]);
    const anchor = {
      id: "h5",
      name: "Anchor with rod",
      unit: "piece",
      per: "guy",
      quantity: 1,
      cost: 60,
      note: "",
    } as const;
    const anchored = billOf(openPlant(withRows(guyed, "hardware", [{ ...anchor, ...basis }])));
    expect(anchored.filter((one) => one.group === "Guys").map((one) => [one.item, one.quantity])).toEqual([
      ["Guy strand Quarter inch", 10],
    ]);
    expect(anchored.filter((one) => /anchor/i.test(one.item))).toEqual([
      {
        group: "Hardware",
        assembly: "At each guy: 1",
        item: "Anchor with rod",
        counted: "1 for each guy",
        quantity: 1,
        unit: "piece",
        allowanceFrac: 0,
        price: 60,
      },
    ]);
    expect(billOf(openPlant(guyed)).some((one) => /anchor/i.test(one.item))).toBe(false);
  });

  it("orders one anchor for one guy; spares of them only where the company keeps spares, and of lengths at a guy for waste", () => {
    const atGuy = (id: string, unit: "piece" | "m") =>
      ({ id, name: id, unit, per: "guy", quantity: 1, cost: 0, note: "", ...basis }) as const;
    const [guy] = route.guy.values();
    if (!guy) throw new Error("the small route has no guy");
    const guyed = withRows({ ...route, guy: new Map([[guy.id, guy]]) }, "hardware", [
      atGuy("Anchor", "piece"),
      atGuy("Guard", "m"),
    ]);
    const ordered = (of: Route) =>
      billOf(openPlant(of)).flatMap((one) => (one.group === "Hardware" ? [[one.item, toOrder(one, "metric")]] : []));
    expect(ordered(guyed)).toEqual(
      expect.arrayContaining([
        ["Anchor", 1],
        ["Guard", 2],
      ]),
    );
    expect(ordered(settingsWith(guyed, 0.1))).toEqual(expect.arrayContaining([["Anchor", 2]]));
  });

  it("allows for waste on lengths and hardware, for spares on terminals", () => {
    expect(lines.get("Strand Quarter inch")?.allowanceFrac).toBe(0.05);
    expect(lines.get("Terminal, 8 ports")).toMatchObject({ quantity: 2, allowanceFrac: 0 });
    const spared = billOf(openPlant(settingsWith(route, 0.1)));
    expect(spared.find((one) => one.group === "Terminals")).toMatchObject({ quantity: 2, allowanceFrac: 0.1 });
    expect(spared.filter((one) => one.group === "Hardware").every((one) => one.allowanceFrac === 0.05)).toBe(true);
  });

  it("tells on paper and in the workbook what was added of what", () => {
    const { rows, notes } = billSchedule(openPlant(settingsWith(route, 0.025)));
    const cells = rows.flatMap((one) => ("cells" in one ? [one.cells.map(cellText)] : []));
    expect(cells).toContainEqual(["Terminal, 8 ports", "with splitters inside", "2", "2.5", "3", "piece"]);
    expect(notes).toEqual([
      "To order: lengths and hardware with 5 % more for waste, terminals and pieces at guys with 2.5 % more as spares; rounded up to whole feet and pieces.",
    ]);
    expect(billSchedule(openPlant(route)).notes[0]).toContain("terminals and pieces at guys as drawn");
  });
});

import { expect, test } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { cellText, figure, heightCell, lengthCell, stationCell } from "../../../core/sheets/paper/figure.ts";
import { flatSchedule } from "../../../core/sheets/schedule/schedule.ts";
import { schedules } from "../../../core/sheets/schedule/schedules.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const flat = (name: string, route = windingRoute()) => {
  const schedule = schedules(openPlant(route), []).find((one) => one.name === name);
  if (!schedule) throw new Error(`no schedule ${name}`);
  return flatSchedule(schedule);
};

test("a figure is the number that paper prints, in the unit of its column", () => {
  expect([cellText(lengthCell(376.4, "us")), lengthCell(376.4, "us").value]).toEqual(["1,235", 1235]);
  expect([cellText(heightCell(5.6388, "us")), heightCell(5.6388, "us").value]).toEqual(["18 ft 6 in", 18.5]);
  expect([cellText(stationCell(376.428, "us")), stationCell(376.428, "us").value]).toEqual(["12+35", 1235]);
  expect(cellText(figure(61.24, 1, { before: "◆ ", after: ", unverified" }))).toBe("◆ 61.2, unverified");
  expect(figure(-0.04, 1).value).toBe(0);
});

test("headings name their units, also where paper prints the unit in the cell", () => {
  expect(flat("Cables and reels").headings.slice(0, 4)).toEqual(["Cable", "Pole", "Station (ft)", "Sheath here (ft)"]);
  expect(flat("Pole permits", windingRoute({ unitSystem: "metric" })).headings).toContain("Proposed (m)");
});

test("columns under one heading are told apart by it", () => {
  const { headings } = flat("Stringing");
  expect(headings.filter((one) => one.startsWith("Tension to pull to, ")).length).toBeGreaterThan(3);
  expect(new Set(headings).size).toBe(headings.length);
});

test("every row says which terminal, cable, pole or section it belongs to", () => {
  const route = windingRoute();
  const names = new Set([...route.terminal.values()].map((one) => one.name));
  const { rows } = flat("Ports and drops", route);
  expect(rows.length).toBeGreaterThan(route.drop.size);
  expect(rows.filter(([terminal]) => typeof terminal !== "string" || !names.has(terminal))).toEqual([]);
});

test("what paper prints across the columns stands among the remarks", () => {
  const { headings, rows } = flat("Guys and anchors");
  expect(headings.at(-1)).toBe("Remarks");
  expect(
    rows.filter((row) => row[0] === "wanting").every((row) => String(row.at(-1)).includes("a guy is wanted")),
  ).toBe(true);
});

test("the forms of the closeout go out like all else, a row for each pole, span, terminal and port", () => {
  const route = smallRoute();
  const form = (what: string) => flat(`Closeout of ${what}`, route);
  expect(form("poles").headings.slice(0, 3)).toEqual(["Pole", "Strand drawn at", "Built at"]);
  expect(form("poles").rows).toHaveLength(route.pole.size);
  expect(form("spans").rows).toHaveLength(route.span.size);
  expect(new Set(form("spans").headings).size).toBe(form("spans").headings.length);
  expect(form("terminals").rows).toHaveLength(route.terminal.size);
  const ports = form("ports");
  expect(ports.headings.slice(0, 3)).toEqual(["Terminal", "House tag", "Living unit"]);
  expect(ports.rows.every(([terminal, tag]) => String(tag).startsWith(`${terminal}-`))).toBe(true);
  expect(ports.notes).toEqual([expect.stringContaining("Write what was built")]);
});

test("every row is as wide as the headings", () => {
  for (const schedule of schedules(openPlant(smallRoute()), [])) {
    const { headings, widths, rows } = flatSchedule(schedule);
    expect(widths).toHaveLength(headings.length);
    expect(rows.filter((row) => row.length !== headings.length)).toEqual([]);
  }
});

test("splices say on which side their fiber is, and fibers and prices are numbers", () => {
  const { headings } = flat("Splices in closures");
  expect(headings.slice(1, 9).map((one) => one.split(",")[0])).toEqual([
    ...Array(4).fill("From"),
    ...Array(4).fill("To"),
  ]);
  const lit = flat("Splices at the hub").rows.filter((row) => row[3] !== "");
  expect(lit.length).toBeGreaterThan(5);
  expect(lit.every((row) => typeof row[3] === "object")).toBe(true);
  const priced = flat("Bill with prices").rows.filter((row) => row[5] !== "");
  expect(priced.length).toBeGreaterThan(5);
  expect(priced.every((row) => typeof row[4] === "object" && typeof row[5] === "object")).toBe(true);
  expect(flat("Bonds and grounds").rows.length).toBeGreaterThan(5);
});

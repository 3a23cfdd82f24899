import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { oneEdit, planCells } from "../../../../renderer/tables/cellEdits.ts";
import { kindOf } from "../../../../renderer/tables/kinds.ts";
import { granted } from "../../../fixtures/layout/asking.ts";
import { smallRoute } from "../../../fixtures/route/buildRoute.ts";

const route = smallRoute();
const given = { plant: openPlant(route), units: "us" as const };

function column(kindId: string, key: string) {
  const found = kindOf(kindId).columns.find((one) => one.key === key);
  if (!found) throw new Error(`no column ${key}`);
  return found;
}

test("a bare figure is in the heading's unit, another unit may be written", () => {
  const wishes = [
    { rowId: "pole-1", column: column("pole", "aboveGroundM"), text: "30" },
    { rowId: "pole-2", column: column("pole", "aboveGroundM"), text: "9 m" },
  ];
  const { steps } = planCells(given, wishes);
  const edit = oneEdit(steps, "Paste 2 cells");
  const after = granted(route, edit?.command ?? "", edit?.input);
  expect(after.pole.get("pole-1")?.aboveGroundM).toBeCloseTo(9.144, 12);
  expect(after.pole.get("pole-2")?.aboveGroundM).toBe(9);
});

test("a cell that cannot be read is told with its reason and the others are written", () => {
  const plan = planCells(given, [
    { rowId: "pole-1", column: column("pole", "aboveGroundM"), text: "tall" },
    { rowId: "pole-1", column: column("pole", "owner"), text: "Valley Power" },
  ]);
  expect(plan.bad).toMatchObject([{ rowId: "pole-1", column: "aboveGroundM", text: "tall" }]);
  expect(plan.steps).toEqual([
    { command: "row.set", input: { table: "pole", id: "pole-1", values: { owner: "Valley Power" } } },
  ]);
});

test("what a command refuses is told at its cell: a terminal past the far pole", () => {
  const plan = planCells(given, [{ rowId: "terminal-1", column: column("terminal", "offsetM"), text: "9999 ft" }]);
  expect(plan.steps).toEqual([]);
  expect(plan.bad[0]?.reason).toContain("past the far pole");
});

test("a computed cell stays, and a text the cell shows already changes nothing", () => {
  const tag = route.pole.get("pole-1")?.tag ?? "";
  const plan = planCells(given, [
    { rowId: "pole-1", column: column("pole", "spans"), text: "99" },
    { rowId: "pole-1", column: column("pole", "tag"), text: tag },
  ]);
  expect(plan).toEqual({ steps: [], goodCount: 0, bad: [] });
});

test("giving a port to a living unit moves the unit's drop, and an empty cell takes the drop away", () => {
  const [drop] = route.drop.values();
  if (!drop) throw new Error("the small route has no drop");
  const row = (port: number) => `${port} ${drop.terminalId}`;
  const address = route.livingUnit.get(drop.livingUnitId)?.address ?? "";
  const taken = new Set(
    [...route.drop.values()].filter((one) => one.terminalId === drop.terminalId).map((one) => one.port),
  );
  const free = [1, 2, 3, 4].find((port) => !taken.has(port)) ?? 4;
  const moved = planCells(given, [{ rowId: row(free), column: column("port", "unit"), text: address }]);
  expect(moved.steps).toEqual([
    { command: "drop.move", input: { dropId: drop.id, terminalId: drop.terminalId, port: free } },
  ]);
  const emptied = planCells(given, [{ rowId: row(drop.port), column: column("port", "unit"), text: "" }]);
  expect(emptied.steps).toEqual([{ command: "drop.remove", input: { dropId: drop.id } }]);
});

import { expect, test } from "vitest";
import { subjectOf } from "../../../../core/closeout/subject.ts";
import { openPlant } from "../../../../core/plant/plant.ts";
import { metresPerFoot, metresPerInch } from "../../../../core/units/constants.ts";
import { oneEdit, planCells } from "../../../../renderer/tables/cellEdits.ts";
import { cellText } from "../../../../renderer/tables/columns/column.ts";
import { kindOf } from "../../../../renderer/tables/kinds.ts";
import { granted } from "../../../fixtures/layout/asking.ts";
import { smallRoute, withRows } from "../../../fixtures/route/buildRoute.ts";
import { punchOf, readingRow } from "../../../fixtures/route/readingRow.ts";

const terminal = subjectOf("terminal", "terminal-1");
const bare = smallRoute();
const [drop] = bare.drop.values();
if (!drop) throw new Error("the small route has no drop");
const route = withRows(
  bare,
  "reading",
  [
    readingRow(terminal, "offset", 48 * metresPerInch),
    readingRow(terminal, "slack", 30 * metresPerFoot),
    readingRow(subjectOf("port", "terminal-1", 1), "power", -18.4, 1490),
    readingRow(subjectOf("drop", drop.id), "houseTag", "T-9"),
  ],
  "punch",
  [
    punchOf("punch-1", 1),
    { ...punchOf("punch-2", 2), doneBy: "Ann", doneIso: "2030-06-02T08:00:00Z", doneNote: "Re-hung" },
  ],
);
const plant = openPlant(route);

function lines(kindId: string, units: "us" | "metric", keys: readonly string[]): string[][] {
  const kind = kindOf(kindId);
  const columns = keys.map((key) => {
    const found = kind.columns.find((one) => one.key === key);
    if (!found) throw new Error(`no column ${key}`);
    return found;
  });
  return kind.ids(route, plant).map((id) => columns.map((column) => cellText(column, { plant, units }, id)));
}

test("readings are told by the thing's name, what was read and its figure in the route's units", () => {
  const name = route.terminal.get("terminal-1")?.name ?? "";
  expect(lines("reading", "us", ["thing", "what", "value", "by", "day"])).toEqual([
    [`terminal ${name}`, "from the pole", "48 in", "Crew 1", "2030-05-01"],
    [`terminal ${name}`, "coil left", "30 ft", "Crew 1", "2030-05-01"],
    [`port 1 of ${name}`, "light at 1490 nm", "-18.40 dBm", "Crew 1", "2030-05-01"],
    [`drop of ${route.livingUnit.get(drop.livingUnitId)?.address}`, "house tag", "T-9", "Crew 1", "2030-05-01"],
  ]);
  expect(lines("reading", "metric", ["value"]).flat()).toEqual(["1.219 m", "9.144 m", "-18.40 dBm", "T-9"]);
});

test("a reading stands beside what was drawn, and how far it is from it", () => {
  const [offset, , , tag] = lines("reading", "us", ["drawn", "against"]);
  expect(offset?.[0]).toMatch(/^\d+(\.\d+)? in$/);
  expect(offset?.[1]).toMatch(/^[\d.]+ in more/);
  expect(tag).toEqual([`${route.terminal.get(drop.terminalId)?.name}-${drop.port}`, "not as drawn"]);
});

test("nobody types a reading into a table: it is signed for where it is taken", () => {
  expect(kindOf("reading").columns.filter((one) => one.write !== null)).toEqual([]);
});

test("several cells of an item of the punch list are written as one edit, and what is not named stays", () => {
  const column = (key: string) => {
    const found = kindOf("punch").columns.find((one) => one.key === key);
    if (!found) throw new Error(`no column ${key}`);
    return found;
  };
  const plan = planCells({ plant, units: "us" }, [
    { rowId: "punch-1", column: column("what"), text: "Re-hang it" },
    { rowId: "punch-1", column: column("assignedTo"), text: "Crew 2" },
    { rowId: "punch-1", column: column("dueIso"), text: "2030-05-21" },
    { rowId: "punch-2", column: column("dueIso"), text: "2030-02-30" },
    { rowId: "punch-2", column: column("what"), text: " " },
    { rowId: "punch-2", column: column("state"), text: "open" },
  ]);
  expect(plan.bad.map((one) => [one.rowId, one.column])).toEqual([
    ["punch-2", "dueIso"],
    ["punch-2", "what"],
  ]);
  const edit = oneEdit(plan.steps, "Paste 3 cells");
  const after = granted(route, edit?.command ?? "", edit?.input).punch;
  expect(after.get("punch-1")).toEqual({
    ...route.punch.get("punch-1"),
    what: "Re-hang it",
    assignedTo: "Crew 2",
    dueIso: "2030-05-21",
  });
  expect(after.get("punch-2")).toEqual(route.punch.get("punch-2"));
});

test("a row of either table leads to its thing on the diagram, and to nothing where the thing is gone", () => {
  expect(kindOf("punch").refs(plant, "punch-1")).toEqual(["terminal/terminal-1"]);
  const gone = withRows(route, "punch", [{ ...punchOf("punch-3", 3), subjectId: "terminal-gone" }]);
  expect(kindOf("punch").refs(openPlant(gone), "punch-3")).toEqual([]);
});

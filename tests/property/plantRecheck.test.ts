import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyChange } from "../../core/edits/change.ts";
import { findCommand } from "../../core/edits/register.ts";
import { references } from "../../core/model/references.ts";
import type { Route } from "../../core/model/route.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import { type Row, type TableName, tableNames } from "../../core/model/tables.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { openChecker } from "../../core/rules/checker.ts";
import { smallRoute } from "../fixtures/route/buildRoute.ts";
import { findingsOf } from "../fixtures/route/checkRoute.ts";
import { extremeRoute } from "../fixtures/route/extremeRoute.ts";
import { withLateral } from "../fixtures/route/faultyRoutes.ts";

/** A wild edit: some column of some row takes the value another row of the table has there, or the row goes, or is doubled. */
type WildEdit = {
  readonly table: TableName;
  readonly row: number;
  readonly from: number;
  readonly column: number;
  readonly what: "copy" | "scale" | "remove" | "double";
};

const wildEdit: fc.Arbitrary<WildEdit> = fc.record({
  table: fc.constantFrom(
    ...tableNames.filter((name) => name !== "settings" && name !== "waiver" && name !== "revision"),
  ),
  row: fc.nat(),
  from: fc.nat(),
  column: fc.nat(),
  what: fc.constantFrom("copy", "copy", "scale", "remove", "double"),
});

function rowsOfWild(route: Route, edit: WildEdit, serial: number): RowChange[] {
  const rows: readonly Row<TableName>[] = [...route[edit.table].values()];
  const before = rows[edit.row % Math.max(rows.length, 1)];
  const other = rows[edit.from % Math.max(rows.length, 1)];
  if (!before || !other) return [];
  const { table } = edit;
  const put = (id: string, from: object | null, after: object | null): RowChange[] => [
    { table, id, before: from, after } as RowChange, // both rows come from that table
  ];
  if (edit.what === "remove") return isPointedAt(route, table, before.id) ? [] : put(before.id, before, null);
  if (edit.what === "double") return put(`wild-${serial}`, null, { ...before, id: `wild-${serial}` });
  const columns = Object.keys(before).filter((name) => name !== "id");
  const column = columns[edit.column % columns.length] ?? "";
  const own: unknown = Reflect.get(before, column);
  const value = edit.what === "scale" && typeof own === "number" ? own * 1.37 : Reflect.get(other, column);
  return put(before.id, before, { ...before, [column]: value });
}

function isPointedAt(route: Route, table: TableName, id: string): boolean {
  return tableNames.some((owner) =>
    Object.entries(references[owner]).some(
      ([column, target]) =>
        target === table && [...route[owner].values()].some((row) => Reflect.get(row, column) === id),
    ),
  );
}

describe("checking after an edit", () => {
  it("finds what checking everything finds, whatever was edited before", () => {
    let editCount = 0;
    fc.assert(
      fc.property(fc.array(wildEdit, { minLength: 1, maxLength: 12 }), (edits) => {
        let route = withLateral();
        const checker = openChecker(openPlant(route));
        for (const [serial, edit] of edits.entries()) {
          const rows = rowsOfWild(route, edit, serial);
          const applied = applyChange(route, { rows });
          if (!applied.ok) continue;
          route = applied.value;
          editCount += rows.length;
          checker.advance(route, rows);
        }
        expect(checker.findings()).toEqual(findingsOf(route));
      }),
      { numRuns: 150 },
    );
    expect(editCount).toBeGreaterThan(300);
  });

  it("answers with what is gone and what is found, so that a list kept by them is the list of everything", () => {
    fc.assert(
      fc.property(fc.array(wildEdit, { minLength: 1, maxLength: 8 }), (edits) => {
        let route = extremeRoute();
        const checker = openChecker(openPlant(route));
        const kept = new Map(checker.findings().map((one) => [one.key, one]));
        for (const [serial, edit] of edits.entries()) {
          const rows = rowsOfWild(route, edit, serial);
          const applied = applyChange(route, { rows });
          if (!applied.ok) continue;
          route = applied.value;
          const { gone, found } = checker.advance(route, rows);
          for (const key of gone) kept.delete(key);
          for (const one of found) kept.set(one.key, one);
        }
        expect([...kept.keys()].sort()).toEqual(
          checker
            .findings()
            .map((one) => one.key)
            .sort(),
        );
      }),
      { numRuns: 100 },
    );
  });
});

const localEdits = [
  { command: "terminal.move", input: { terminalId: "terminal-1", spanId: "span-2", offsetM: 1.2 } },
  { command: "terminal.remove", input: { terminalId: "terminal-1" } },
  { command: "terminal.rename", input: { terminalId: "terminal-1", name: "T900" } },
  { command: "drop.move", input: { dropId: "drop-1", terminalId: "terminal-1", port: 5 } },
  { command: "fiber.free", input: { fiberUseId: "use-1" } },
  { command: "pole.rename", input: { poleId: "pole-2", tag: "P900" } },
  { command: "attachment.set", input: { attachmentId: "strand-2", heightM: 6 } },
  { command: "crossing.set", input: { crossingId: "crossing-1", values: { surfaceM: 101.5 } } },
  { command: "slack.move", input: { slackId: "coil-1", spanId: "span-2", offsetM: 2 } },
] as const;

function askedAfter(route: Route, edit: (typeof localEdits)[number]): number {
  const checker = openChecker(openPlant(route));
  const asked = findCommand(edit.command)?.ask(route, edit.input);
  if (!asked?.ok) throw new Error(asked ? asked.fault.what : edit.command);
  const applied = applyChange(route, { rows: asked.value.rows });
  if (!applied.ok) throw new Error(applied.fault.what);
  return checker.advance(applied.value, asked.value.rows).askedCount;
}

describe("rows asked again after an edit", () => {
  it.each(localEdits)("are as many on a line ten times as long: $command", (edit) => {
    const onShort = askedAfter(smallRoute({ poleCount: 12 }), edit);
    const onLong = askedAfter(smallRoute({ poleCount: 120 }), edit);
    expect(onLong).toBe(onShort);
    expect(onShort).toBeGreaterThan(0);
  });
});

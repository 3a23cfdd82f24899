import { expect, test } from "vitest";
import { granted, labelOf, refusal } from "../../fixtures/layout/asking.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

test("columns of a row are written, and a value its table does not take is refused", () => {
  const input = { table: "pole", id: "pole-1", values: { owner: "Valley Power", aboveGroundM: null } };
  expect(granted(smallRoute(), "row.set", input).pole.get("pole-1")).toMatchObject({
    owner: "Valley Power",
    aboveGroundM: null,
  });
  expect(refusal(smallRoute(), "row.set", { ...input, values: { aboveGroundM: -1 } }).code).toBe("bad-value");
  expect(refusal(smallRoute(), "row.set", { ...input, values: { colour: "red" } }).code).toBe("bad-value");
  expect(refusal(smallRoute(), "row.set", { ...input, id: "pole-99" }).code).toBe("missing-row");
});

test("a column other rows lean on is left to its own command", () => {
  expect(refusal(smallRoute(), "row.set", { table: "span", id: "span-1", values: { lengthM: 40 } }).code).toBe(
    "guarded",
  );
  expect(
    refusal(smallRoute(), "row.set", { table: "terminal", id: "terminal-1", values: { spanId: "span-1" } }).code,
  ).toBe("guarded");
  expect(refusal(smallRoute(), "row.set", { table: "settings", id: "settings", values: { company: "A" } }).code).toBe(
    "guarded",
  );
});

test("a reference must lead somewhere", () => {
  const input = { table: "drop", id: "drop-1", values: { dropTypeId: "drop-none" } };
  expect(refusal(smallRoute(), "row.set", input).code).toBe("missing-row");
});

test("many rows are written at once or not at all, and none twice", () => {
  const edits = ["pole-1", "pole-2"].map((id) => ({ table: "pole", id, values: { owner: "A" } }));
  const route = granted(smallRoute(), "rows.set", { edits });
  expect([route.pole.get("pole-1")?.owner, route.pole.get("pole-2")?.owner]).toEqual(["A", "A"]);
  expect(labelOf(smallRoute(), "rows.set", { edits })).toBe("Change 2 rows");
  const bad = [...edits, { table: "pole", id: "pole-3", values: { tag: "" } }];
  expect(refusal(smallRoute(), "rows.set", { edits: bad }).code).toBe("bad-value");
  expect(refusal(smallRoute(), "rows.set", { edits: [...edits, ...edits] }).code).toBe("named-twice");
});

test("several rows go in one edit with what hangs on them", () => {
  const rows = ["terminal-1", "terminal-2"].map((id) => ({ table: "terminal", id }));
  const route = granted(smallRoute(), "rows.remove", { rows });
  expect([route.terminal.size, route.drop.size]).toEqual([0, 0]);
  expect(labelOf(smallRoute(), "rows.remove", { rows })).toBe("Remove 2 terminals");
});

test("a measured span takes what hangs in it along, and is refused where it would not hold it", () => {
  const far = changed(smallRoute(), "terminal", "terminal-1", { offsetM: 44 });
  expect(
    granted(far, "span.measure", { spanId: "span-2", lengthM: 50 }).terminal.get("terminal-1")?.offsetM,
  ).toBeCloseTo(49, 9);
  expect(refusal(far, "span.measure", { spanId: "span-2", lengthM: 0.5 }).code).toBe("no-room");
});

test("steps are carried out one on the other and come back as one edit; one that is refused refuses all", () => {
  const steps = [
    { command: "pole.rename", input: { poleId: "pole-1", tag: "A" } },
    { command: "row.set", input: { table: "pole", id: "pole-1", values: { owner: "B" } } },
  ];
  const route = granted(smallRoute(), "steps.run", { label: "Paste 2 cells", steps });
  expect(route.pole.get("pole-1")).toMatchObject({ tag: "A", owner: "B" });
  expect(labelOf(smallRoute(), "steps.run", { label: "Paste 2 cells", steps })).toBe("Paste 2 cells");
  const bad = [...steps, { command: "pole.paint", input: {} }];
  expect(refusal(smallRoute(), "steps.run", { label: "Paste", steps: bad }).code).toBe("unknown-command");
});

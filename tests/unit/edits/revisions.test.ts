import { expect, test } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { findCommand } from "../../../core/edits/register.ts";
import type { Route } from "../../../core/model/route.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { revisionOf } from "../../fixtures/route/revisionRow.ts";

const issue = {
  revisionId: "revision-2",
  letter: "B",
  dateIso: "2030-03-02",
  by: "Ann",
  checkedBy: "Ben",
  reason: "Moved",
};
const withA = withRows(smallRoute(), "revision", [revisionOf("A", 1)]);

test("a revision is issued after those before it, approved by nobody", () => {
  expect(asked(withA, "revision.issue", issue).revision.get("revision-2")).toEqual({
    ...revisionOf("B", 2),
    id: "revision-2",
    dateIso: "2030-03-02",
    by: "Ann",
    checkedBy: "Ben",
    reason: "Moved",
  });
});

test("no letter is issued twice, in capitals or not, even where the first is void", () => {
  const voided = withRows(smallRoute(), "revision", [{ ...revisionOf("A", 1), voidedBy: "Ann" }]);
  for (const route of [withA, voided])
    for (const letter of ["A", "a"])
      expect(refused(route, "revision.issue", { ...issue, letter })).toBe("taken-letter");
});

test("a revision is approved once, by name and date", () => {
  const approval = { revisionId: "revision-A", by: "Cleo", dateIso: "2030-03-04" };
  const approved = asked(withA, "revision.approve", approval);
  expect(approved.revision.get("revision-A")).toMatchObject({ approvedBy: "Cleo", approvedIso: "2030-03-04" });
  expect(refused(approved, "revision.approve", approval)).toBe("approved");
  expect(refused(withA, "revision.approve", { ...approval, revisionId: "nowhere" })).toBe("missing-row");
});

test("a void revision stays on record with its reason and is neither approved nor made void again", () => {
  const why = { revisionId: "revision-A", by: "Cleo", dateIso: "2030-03-05", reason: "Wrong pole list" };
  const voided = asked(withA, "revision.void", why);
  expect(voided.revision.get("revision-A")).toMatchObject({ voidedBy: "Cleo", voidReason: "Wrong pole list" });
  expect(refused(voided, "revision.void", why)).toBe("void");
  expect(refused(voided, "revision.approve", { revisionId: "revision-A", by: "Cleo", dateIso: "2030" })).toBe("void");
  expect(refused(withA, "revision.void", { ...why, revisionId: "nowhere" })).toBe("missing-row");
});

test("what was issued cannot be removed as other rows can", () => {
  expect(refused(withA, "row.remove", { table: "revision", id: "revision-A" })).toBe("issued");
});

function asked(route: Route, commandId: string, input: object): Route {
  const done = findCommand(commandId)?.ask(route, input);
  if (!done?.ok) throw new Error(done?.fault.what ?? commandId);
  const next = applyChange(route, done.value);
  if (!next.ok) throw new Error(next.fault.what);
  return next.value;
}

function refused(route: Route, commandId: string, input: object): string {
  const done = findCommand(commandId)?.ask(route, input);
  return done === undefined || done.ok ? "granted" : done.fault.code;
}

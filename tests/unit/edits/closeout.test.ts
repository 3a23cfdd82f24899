import { expect, test } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { findCommand } from "../../../core/edits/register.ts";
import type { Route } from "../../../core/model/route.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { photoOf } from "../../fixtures/route/readingRow.ts";

const signed = { by: "Crew 1", atIso: "2030-05-01T08:00:00Z" };
const terminal = { kind: "terminal", subjectId: "terminal-1", port: 0, alongId: "" };
const offset = { ...terminal, what: "offset", wavelengthNm: 0, value: 0.9, text: "", ...signed };

test("a thing that is tested is issued and built too, each signed by who said so first", () => {
  const built = asked(smallRoute(), "milestone.reach", { subjects: [terminal], state: "built", ...signed });
  const tested = asked(built, "milestone.reach", { subjects: [terminal], state: "tested", by: "Ann", atIso: "2030" });
  expect([...tested.milestone.values()].map(({ state, by }) => [state, by])).toEqual([
    ["issued", "Crew 1"],
    ["built", "Crew 1"],
    ["tested", "Ann"],
  ]);
});

test("a thing taken back to designed has reached nothing", () => {
  const built = asked(smallRoute(), "milestone.reach", { subjects: [terminal], state: "accepted", ...signed });
  expect(asked(built, "milestone.reach", { subjects: [terminal], state: "designed", ...signed }).milestone.size).toBe(
    0,
  );
});

test("a later reading of the same thing takes the place of the first; one at another wavelength stands beside it", () => {
  const port = { ...offset, kind: "port", port: 1, what: "power", wavelengthNm: 1550, value: -18 };
  const once = asked(smallRoute(), "reading.take", port);
  const again = asked(once, "reading.take", { ...port, value: -19 });
  const both = asked(again, "reading.take", { ...port, wavelengthNm: 1310, value: -20 });
  expect([...both.reading.values()].map(({ wavelengthNm, value }) => [wavelengthNm, value])).toEqual([
    [1550, -19],
    [1310, -20],
  ]);
});

test("nothing is read of a terminal that is not there, or of a port its face has not", () => {
  expect(code(smallRoute(), "reading.take", { ...offset, subjectId: "nowhere" })).toBe("missing-row");
  expect(code(smallRoute(), "reading.take", { ...offset, kind: "port", port: 99 })).toBe("missing-row");
});

function code(route: Route, id: string, input: unknown): string {
  const done = findCommand(id)?.ask(route, input);
  return !done ? "no command" : done.ok ? "granted" : done.fault.code;
}

function asked(route: Route, id: string, input: unknown): Route {
  const done = findCommand(id)?.ask(route, input);
  if (!done?.ok) throw new Error(done?.fault.what ?? "no such command");
  const next = applyChange(route, done.value);
  if (!next.ok) throw new Error(next.fault.what);
  return next.value;
}

const item = {
  ...terminal,
  punchId: "punch-a",
  what: "Re-hang at 36 in",
  ruleId: "built-offset",
  subjects: "terminal terminal-1 offset terminal-1",
  assignedTo: "",
  dueIso: "",
  ...signed,
};

test("the punch list numbers what is put on it, and is worked through", () => {
  const two = asked(asked(smallRoute(), "punch.add", item), "punch.add", { ...item, punchId: "punch-b" });
  const set = asked(two, "punch.set", {
    punchId: "punch-b",
    what: "Re-hang",
    assignedTo: "Crew 2",
    dueIso: "2030-06-01",
  });
  const done = asked(set, "punch.done", { punchId: "punch-b", by: "Crew 2", atIso: "2030-05-20", note: "moved" });
  expect(
    [...done.punch.values()].map(({ number, what, assignedTo, doneBy }) => [number, what, assignedTo, doneBy]),
  ).toEqual([
    [1, "Re-hang at 36 in", "", ""],
    [2, "Re-hang", "Crew 2", "Crew 2"],
  ]);
  expect(code(done, "punch.done", { punchId: "punch-b", by: "X", atIso: "2030", note: "" })).toBe("punch-done");
  const open = asked(done, "punch.reopen", { punchId: "punch-b" });
  expect(open.punch.get("punch-b")?.doneIso).toBe("");
  expect(code(open, "punch.reopen", { punchId: "punch-b" })).toBe("punch-open");
  expect(code(open, "punch.set", { punchId: "punch-c", what: "x", assignedTo: "", dueIso: "" })).toBe("missing-row");
  expect(code(open, "punch.add", item)).toBe("taken-id");
});

test("another figure read of a thing takes back what was accepted of the former; the same figure again does not", () => {
  const read = asked(smallRoute(), "reading.take", offset);
  const waived = asked(read, "finding.waive", {
    waiverId: "waiver-1",
    ruleId: "built-offset",
    subjects: "terminal terminal-1 offset terminal-1",
    reason: "pole in the way",
    ...signed,
  });
  expect(asked(waived, "reading.take", offset).waiver.size).toBe(1);
  expect(asked(waived, "reading.take", { ...offset, value: 1.4 }).waiver.size).toBe(0);
});

test("a reading taken back is missing again; one that is not there is refused", () => {
  const read = asked(smallRoute(), "reading.take", offset);
  expect(asked(read, "reading.remove", { readingId: "terminal terminal-1 offset" }).reading.size).toBe(0);
  expect(code(smallRoute(), "reading.remove", { readingId: "nowhere" })).toBe("missing-row");
});

test("a photo is added to a thing that is there, and taken away", () => {
  const { id: photoId, ...photo } = photoOf("photo-1");
  const added = asked(smallRoute(), "photo.add", { photoId, ...photo });
  expect(added.photo.size).toBe(1);
  expect(asked(added, "photo.remove", { photoId }).photo.size).toBe(0);
  expect(code(smallRoute(), "photo.add", { photoId, ...photo, subjectId: "nowhere" })).toBe("missing-row");
});

import { expect, test } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { findCommand } from "../../../core/edits/register.ts";
import type { Route } from "../../../core/model/route.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

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

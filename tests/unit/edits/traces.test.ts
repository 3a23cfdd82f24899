import { expect, test } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { keptTraceId } from "../../../core/edits/commands/traceKeep.ts";
import { findCommand } from "../../../core/edits/register.ts";
import type { Route } from "../../../core/model/route.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { spareTrace } from "../../fixtures/route/tracedRoute.ts";

const signed = { by: "R. Diaz", atIso: "2026-05-04T15:00:00.000Z" };
const event = { number: 1, atM: 148, lossDb: 20, reflectanceDb: null, slopeDbPerKm: 0.2, reflects: true, ends: true };
const columns = Object.fromEntries(
  Object.entries(spareTrace).filter(([name]) => !["id", "by", "atIso"].includes(name)),
);
const trace = { ...columns, keptHash: spareTrace.keptHash, events: [event] };
const traceId = keptTraceId(trace.keptHash);

test("a trace is kept with its events, and the edit is named by its file", () => {
  const done = asked(smallRoute(), "trace.keep", { traces: [trace], ...signed });
  expect(done.label).toBe("Keep trace C1-F040.sor");
  expect([...done.route.trace.values()]).toEqual([{ ...spareTrace, id: traceId }]);
  expect([...done.route.traceEvent.values()]).toEqual([{ id: `${traceId} 1`, traceId, ...event }]);
});

test("a file that is kept already is kept once; where nothing new is among the files it is told", () => {
  const { route } = asked(smallRoute(), "trace.keep", { traces: [trace], ...signed });
  const other = { ...trace, keptHash: "1".repeat(64) };
  expect(asked(route, "trace.keep", { traces: [trace, other], ...signed }).route.trace.size).toBe(2);
  expect(code(route, "trace.keep", { traces: [trace], ...signed })).toBe("kept-already");
});

test("a trace of a cable or fiber that is not there is refused; one that nobody has said is kept", () => {
  expect(code(smallRoute(), "trace.keep", { traces: [{ ...trace, cableId: "gone" }], ...signed })).toBe("missing-row");
  expect(code(smallRoute(), "trace.keep", { traces: [{ ...trace, fiber: 999 }], ...signed })).toBe("beyond-cable");
  expect(code(smallRoute(), "trace.keep", { traces: [{ ...trace, cableId: null, fiber: null }], ...signed })).toBe(
    "granted",
  );
});

test("what several traces are of is said at once, and what is left out stays", () => {
  const other = { ...trace, keptHash: "1".repeat(64), fiber: 41 };
  const { route } = asked(smallRoute(), "trace.keep", { traces: [trace, other], ...signed });
  const given = asked(route, "trace.give", {
    traceIds: [traceId, keptTraceId(other.keptHash)],
    fromEnd: "far",
    leadM: 150,
  });
  expect(given.label).toBe("Say what 2 traces are of");
  expect([...given.route.trace.values()].map((one) => [one.fiber, one.fromEnd, one.leadM])).toEqual([
    [40, "far", 150],
    [41, "far", 150],
  ]);
  expect(code(route, "trace.give", { traceIds: [traceId], fiber: 999 })).toBe("beyond-cable");
  expect(code(route, "trace.give", { traceIds: ["gone"], fiber: 1 })).toBe("missing-row");
});

test("a trace goes with its events, and a trace that is gone cannot go again", () => {
  const { route } = asked(smallRoute(), "trace.keep", { traces: [trace], ...signed });
  const gone = asked(route, "trace.remove", { traceIds: [traceId] });
  expect(gone.label).toBe("Remove trace C1-F040.sor");
  expect([gone.route.trace.size, gone.route.traceEvent.size]).toEqual([0, 0]);
  expect(code(route, "trace.remove", { traceIds: ["gone"] })).toBe("missing-row");
});

function code(route: Route, command: string, input: unknown): string {
  const done = findCommand(command)?.ask(route, input);
  return !done ? "no command" : done.ok ? "granted" : done.fault.code;
}

function asked(route: Route, command: string, input: unknown): { readonly label: string; readonly route: Route } {
  const done = findCommand(command)?.ask(route, input);
  if (!done?.ok) throw new Error(done?.fault.what ?? "no command");
  const next = applyChange(route, done.value);
  if (!next.ok) throw new Error(next.fault.what);
  return { label: done.value.label, route: next.value };
}

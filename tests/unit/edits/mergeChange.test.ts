import { expect, test } from "vitest";
import { applyChange, type Change } from "../../../core/edits/change.ts";
import { mergeable, mergeChanges } from "../../../core/edits/mergeChange.ts";
import { findCommand } from "../../../core/edits/register.ts";
import type { Route } from "../../../core/model/route.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

function moved(route: Route, terminalId: string, offsetM: number, author = "Ann"): { change: Change; route: Route } {
  const spanId = route.terminal.get(terminalId)?.spanId;
  const asked = findCommand("terminal.move")?.ask(route, { terminalId, spanId, offsetM });
  if (!asked?.ok) throw new Error("the move was refused");
  const after = applyChange(route, asked.value);
  if (!after.ok) throw new Error(after.fault.what);
  return { change: { ...asked.value, author, atIso: `2030-01-01T00:00:0${Math.floor(offsetM)}Z` }, route: after.value };
}

test("merges two nudges of one terminal", () => {
  const route = smallRoute();
  const first = moved(route, "terminal-1", 2);
  const second = moved(first.route, "terminal-1", 3);
  expect(mergeable(first.change, second.change)).toBe(true);
  const merged = mergeChanges(first.change, second.change);
  expect(merged.atIso).toBe(second.change.atIso);
  expect(applyChange(route, merged)).toEqual({ ok: true, value: second.route });
});

test("keeps nudges of two terminals apart", () => {
  const first = moved(smallRoute(), "terminal-1", 2);
  const second = moved(first.route, "terminal-2", 2);
  expect(mergeable(first.change, second.change)).toBe(false);
});

test("keeps nudges of two people apart", () => {
  const first = moved(smallRoute(), "terminal-1", 2);
  const second = moved(first.route, "terminal-1", 3, "Bob");
  expect(mergeable(first.change, second.change)).toBe(false);
});

test("keeps a nudge apart from one that was not made on it", () => {
  const route = smallRoute();
  expect(mergeable(moved(route, "terminal-1", 2).change, moved(route, "terminal-1", 3).change)).toBe(false);
});

test("keeps what adds rows apart", () => {
  const { change } = moved(smallRoute(), "terminal-1", 2);
  const added = { ...change, rows: change.rows.map((row) => ({ ...row, before: null })) };
  expect(mergeable(added, added)).toBe(false);
});

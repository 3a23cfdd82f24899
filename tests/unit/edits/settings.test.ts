import { expect, test } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { findCommand } from "../../../core/edits/register.ts";
import type { Route } from "../../../core/model/route.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";

const basis = { document: "Pole owner's manual", clause: "4.2", edition: "3", mark: "seen" } as const;

function set(route: Route, input: object): Route {
  const asked = findCommand("settings.set")?.ask(route, input);
  if (!asked?.ok) throw new Error("refused");
  const done = applyChange(route, asked.value);
  if (!done.ok) throw new Error(done.fault.what);
  return done.value;
}

test("a changed standard carries where it was read, and its findings print that", () => {
  const route = set(smallRoute(), { values: { standoffM: 1 }, basis });
  expect(route.settingBasis.get("standoffM")).toMatchObject({ basisDocument: basis.document, basisMark: "seen" });
  expect(findingsOf(route, "terminal-standoff")[0]?.basis).toEqual(basis);
});

test("a standard changed again without a source is the company's own", () => {
  const route = set(set(smallRoute(), { values: { standoffM: 1 }, basis }), { values: { standoffM: 1.1 } });
  expect(route.settingBasis.get("standoffM")).toMatchObject({
    basisDocument: "company setting",
    basisMark: "practice",
  });
});

test("a source told for a value that stays keeps the value", () => {
  const route = set(changed(smallRoute(), "settings", "settings", { standoffM: 1 }), {
    values: { standoffM: 1 },
    basis,
  });
  expect(route.settings.get("settings")?.standoffM).toBe(1);
  expect(route.settingBasis.get("standoffM")).toMatchObject({ basisClause: "4.2" });
});

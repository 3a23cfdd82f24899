import { describe, expect, it } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { findCommand } from "../../../core/edits/register.ts";
import type { Route } from "../../../core/model/route.ts";
import { drawAsBuilt } from "../../../core/rules/builtReading.ts";
import type { Fix } from "../../../core/rules/rule.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute, faultyRoutes } from "../../fixtures/route/faultyRoutes.ts";

/** The route after a fix; what refused it, where something did. */
function afterFix(route: Route, fix: Fix): Route | string {
  const asked = findCommand(fix.command)?.ask(route, fix.input);
  if (!asked) return `no command ${fix.command}`;
  if (!asked.ok) return asked.fault.what;
  const applied = applyChange(route, { rows: asked.value.rows });
  return applied.ok ? applied.value : applied.fault.what;
}

const fixable = Object.keys(faultyRoutes).flatMap((ruleId) =>
  findingsOf(faultyRoute(ruleId), ruleId).flatMap((finding) =>
    finding.fixes.map((fix) => ({ ruleId, label: fix.label, fix, key: finding.key })),
  ),
);

describe("a fix that a finding offers", () => {
  it("is there for at least half the rules that a single edit can mend", () => {
    expect(new Set(fixable.map((one) => one.ruleId)).size).toBeGreaterThan(20);
  });

  it.each(fixable)("takes the finding of $ruleId away: $label", ({ ruleId, fix, key }) => {
    const mended = afterFix(faultyRoute(ruleId), fix);
    if (typeof mended === "string") throw new Error(mended);
    expect(findingsOf(mended, ruleId).map((one) => one.key)).not.toContain(key);
  });

  // drawn as built, the drawing is held against its own rules: a short coil is then the drawing's error
  it.each(fixable.filter((one) => one.label !== drawAsBuilt))(
    "brings no new error where $ruleId is fixed: $label",
    ({ ruleId, fix }) => {
      const route = faultyRoute(ruleId);
      const mended = afterFix(route, fix);
      if (typeof mended === "string") throw new Error(mended);
      const before = new Set(findingsOf(route).map((one) => one.key));
      const fresh = findingsOf(mended).filter((one) => one.severity === "error" && !before.has(one.key));
      expect(fresh.map((one) => one.message)).toEqual([]);
    },
  );
});

import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { byWeight, subjectsText } from "../../../core/rules/finding.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

function placeOf(route: Route, ruleId: string) {
  return findingsOf(route, ruleId)[0]?.at;
}

function waived(route: Route, ruleId: string): Route {
  const subjects = "pole-2 terminal-1";
  const waiver = {
    id: "waiver-1",
    ruleId,
    subjects,
    reason: "riser in the way",
    by: "A. Engineer",
    atIso: "2026-01-01",
  };
  return withRows(route, "waiver", [waiver]);
}

describe("a finding", () => {
  it("is followed by its rule and its subjects in whatever order", () => {
    const subjects = [
      { table: "terminal", id: "b" },
      { table: "pole", id: "a" },
    ] as const;
    expect(subjectsText(subjects)).toBe("a b");
    expect(findingsOf(faultyRoute("terminal-standoff"))[0]?.key).toBe("terminal-standoff pole-2 terminal-1");
  });

  it("carries the waiver of its own rule", () => {
    const route = faultyRoute("terminal-standoff");
    expect(findingsOf(waived(route, "terminal-standoff"))[0]?.waiverId).toBe("waiver-1");
    expect(findingsOf(waived(route, "terminal-not-allowed"))[0]?.waiverId).toBeNull();
  });

  it.each([
    ["terminal-standoff", { eastM: 46.5, northM: 0 }],
    ["crossing-clearance", { eastM: 67.5, northM: 0 }],
    ["supply-separation-at-pole", { eastM: 45, northM: 0 }],
    ["span-inferred", { eastM: 22.5, northM: 0 }],
    ["unit-without-port", { eastM: 57, northM: 30 }],
    ["fiber-used-twice", { eastM: 45.9144, northM: 0 }],
    ["splitter-without-fiber", { eastM: 45.9144, northM: 0 }],
    ["drop-over-reach", { eastM: 90.9144, northM: 0 }],
    ["cable-longer-than-reel", { eastM: 0, northM: 0 }],
    ["cable-path-broken", { eastM: 45, northM: 0 }],
  ])("of %s is where a person would look", (ruleId, at) => {
    expect(placeOf(faultyRoute(ruleId), ruleId)).toEqual(at);
  });

  it("has no place where it is about the settings or the hub", () => {
    expect(placeOf(faultyRoute("clearance-set-incomplete"), "clearance-set-incomplete")).toBeNull();
    expect(placeOf(faultyRoute("feed-over-split"), "feed-over-split")).toBeNull();
  });

  it("prints the basis of the limit's own row where there is one, else the rule's", () => {
    expect(findingsOf(faultyRoute("crossing-clearance"))[0]?.basis).toEqual({
      document: "test",
      clause: "",
      edition: "",
      mark: "practice",
    });
    expect(findingsOf(faultyRoute("terminal-standoff"))[0]?.basis).toMatchObject({
      document: "company setting",
      clause: "",
    });
  });
});

describe("a list of findings", () => {
  it("has the worst first, then goes by rule and from west to east", () => {
    const route = changed(smallRoute({ settings: { maxSpanM: 44 } }), "pole", "pole-3", { tag: "P2" });
    const list = findingsOf(changed(route, "span", "span-3", { origin: "inferred" }));
    expect(list.map((one) => one.severity)).toEqual(["error", "warning", "warning", "warning", "note"]);
    expect(list.slice(1, 4).map((one) => one.at?.eastM)).toEqual([22.5, 67.5, 112.5]);
    expect([...list].reverse().sort(byWeight)).toEqual(list);
  });
});

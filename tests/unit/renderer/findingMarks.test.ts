import { expect, test } from "vitest";
import type { WindowFinding } from "../../../renderer/app/routeStore.ts";
import { findingMarks } from "../../../renderer/canvas/findingMarks.ts";

function findingAt(key: string, eastM: number, severity: WindowFinding["severity"]): WindowFinding {
  return {
    key,
    ruleId: "rule",
    title: "Rule",
    severity,
    subjects: [{ table: "pole", id: "pole-1" }],
    message: "Something is wrong.",
    measured: null,
    limit: null,
    unit: "",
    basis: { document: "company setting", clause: "", edition: "", mark: "practice" },
    fixes: [],
    at: { eastM, northM: 5 },
    waiverId: null,
  };
}

test("findings that share a place are one mark, shaped by the worst, counting all", () => {
  const marks = findingMarks([findingAt("a", 2, "note"), findingAt("b", 2, "error"), findingAt("c", 3, "warning")], 1);
  expect(marks).toEqual([{ eastM: 2, northM: 5, severity: "error", keys: ["b", "c", "a"] }]);
});

test("zooming in parts the marks of neighbours", () => {
  const findings = [findingAt("a", 2, "warning"), findingAt("b", 12, "warning")];
  expect(findingMarks(findings, 1)).toHaveLength(1);
  expect(findingMarks(findings, 10)).toHaveLength(2);
});

test("a waived finding and one without a place have no mark", () => {
  const findings = [
    { ...findingAt("a", 2, "error"), waiverId: "waiver-1" },
    { ...findingAt("b", 2, "error"), at: null },
  ];
  expect(findingMarks(findings, 1)).toEqual([]);
});

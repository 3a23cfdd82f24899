import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import type { Finding } from "../../../core/rules/finding.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { isMarked, numberOpen } from "../../../core/sheets/schedule/findingNumbers.ts";
import { findingOf } from "../../fixtures/sheets/findings.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const route = windingRoute();
const plant = openPlant(route);
const poles = [...route.pole.values()];

/** A finding at each of so many poles that says the same of all. */
function atPoles(count: number, wishes: Partial<Finding> = {}): readonly Finding[] {
  return poles.slice(0, count).map(({ id, tag, eastM, northM }) =>
    findingOf({
      key: `guy-missing ${id}`,
      ruleId: "guy-missing",
      subjects: [{ table: "pole", id }],
      message: `At pole ${tag} the strand turns and no guy stands against it.`,
      measured: 1.2,
      limit: 0.1,
      unit: "rad",
      at: { eastM, northM },
      ...wishes,
    }),
  );
}

function findingTexts(findings: readonly Finding[]): readonly string[] {
  const { sheets } = composeSet(plant, findings, { kinds: ["findings"] });
  return sheets.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));
}

describe("findings that say the same", () => {
  it("share a number where they are many, and are told once with every place and its figure", () => {
    const findings = [findingOf({ severity: "error" }), ...atPoles(12)];
    expect(numberOpen(plant, findings).map((one) => one.number)).toEqual([1, ...Array(12).fill(2)]);
    const texts = findingTexts(findings);
    expect(texts.filter((text) => text.includes("no guy stands against it"))).toEqual([
      "At pole … the strand turns and no guy stands against it. 12 alike:",
    ]);
    const told = texts.join(" ");
    for (const { tag } of poles.slice(0, 12)) expect(told).toContain(`${tag} (69°)`);
  });

  it("keep a number each where they are few, or are held against other limits", () => {
    const few = numberOpen(plant, atPoles(5));
    expect(few.map((one) => [one.number, one.alike])).toEqual([1, 2, 3, 4, 5].map((number) => [number, null]));
    const other = atPoles(12).map((one, index) => ({ ...one, limit: index / 100 }));
    expect(new Set(numberOpen(plant, other).map((one) => one.number)).size).toBe(12);
  });

  it("are marked on the plans, but for notes that would stand nearly everywhere", () => {
    const isAllMarked = (some: readonly Finding[]) => numberOpen(plant, some).every(isMarked);
    expect(isAllMarked(atPoles(20, { severity: "note" }))).toBe(true);
    expect(isAllMarked(atPoles(21, { severity: "note" }))).toBe(false);
    expect(isAllMarked(atPoles(21, { severity: "warning" }))).toBe(true);
  });
});

it("an angle is listed in degrees", () => {
  expect(findingTexts(atPoles(1))).toEqual(expect.arrayContaining(["69°", "6°"]));
});

import { expect, test } from "vitest";
import { explain } from "../../../../core/explain/explain.ts";
import { type Route, settingsOf } from "../../../../core/model/route.ts";
import { openPlant } from "../../../../core/plant/plant.ts";
import { spanSag } from "../../../../core/plant/spanSag.ts";
import { cellText } from "../../../../renderer/tables/columns/column.ts";
import { steelColumns } from "../../../../renderer/tables/columns/steelColumns.ts";
import { kindOf } from "../../../../renderer/tables/kinds.ts";
import { changed, smallRoute } from "../../../fixtures/route/buildRoute.ts";
import { extremeRoute } from "../../../fixtures/route/extremeRoute.ts";

const plant = openPlant(extremeRoute());
const figureIn = (key: string, spanId = "span-2") => steelColumns.find((one) => one.key === key)?.value(plant, spanId);

test("every explained cell shows the figure its explanation comes to", () => {
  const explained = steelColumns.filter((one) => one.explains);
  expect(explained).toHaveLength(18);
  for (const column of explained) {
    const ref = column.explains?.(plant, "span-2");
    const told = ref && explain(plant, ref, "us");
    if (told?.kind !== "known") throw new Error(`${column.heading} has no explanation`);
    expect(column.value(plant, "span-2"), column.heading).toBeCloseTo(told.result.value, 9);
  }
});

test("the share of the breaking strength is the tension over what the strand breaks at, case by case", () => {
  const sag = spanSag(plant, "span-2");
  if (sag.kind === "unknown") throw new Error("the small route is strung");
  for (const part of ["stringing", "hot", "iced", "loaded", "extremeWind", "extremeIce", "worker"])
    expect(Number(figureIn(`share ${part}`)) * sag.tension.breakingN).toBeCloseTo(
      Number(figureIn(`tension ${part}`)),
      6,
    );
  expect(Number(figureIn("tension loaded"))).toBeGreaterThan(Number(figureIn("tension iced")));
});

test("a case that the settings do not ask for has no columns", () => {
  const asked = (of: Route) =>
    steelColumns.filter((one) => one.isAsked?.(settingsOf(of)) ?? true).map((one) => one.key);
  const further = ["extremeWind", "extremeIce", "worker"].flatMap((part) => [`tension ${part}`, `share ${part}`]);
  expect(asked(extremeRoute())).toEqual(expect.arrayContaining(further));
  expect(asked(smallRoute()).filter((key) => further.includes(key))).toEqual([]);
  expect(asked(extremeRoute({ extremeIceId: null, workerLoadN: 0 })).filter((key) => further.includes(key))).toEqual([
    "tension extremeWind",
    "share extremeWind",
  ]);
});

test("the governing case is the one that uses most of what the strength set allows", () => {
  expect(figureIn("governs")).toBe("with worker");
  const windy = openPlant(changed(extremeRoute(), "strengthLimit", "strength-strand-extremeWind", { limitFrac: 0.1 }));
  const shown = (key: string) => steelColumns.find((one) => one.key === key)?.value(windy, "span-2");
  expect(shown("governs")).toBe("extreme wind");
  expect(Number(shown("used")) * 0.1).toBeCloseTo(Number(shown("share extremeWind")), 9);
});

test("the least clearance says over what, in which case and against which limit", () => {
  const given = { plant, units: "us" } as const;
  const shown = (key: string, spanId: string) => {
    const column = steelColumns.find((one) => one.key === key);
    return column ? cellText(column, given, spanId) : "";
  };
  expect(shown("over", "span-2")).toBe("Test Rd");
  expect(shown("case", "span-2")).toBe("iced");
  expect(figureIn("limit")).toBe(plant.rowOf("clearanceLimit", "limit-road").limitM);
  expect(shown("over", "span-1")).toBe("ground");
});

test("spans without strand of ours are not in the table", () => {
  const bare = changed(smallRoute(), "span", "span-2", { strandSectionId: null });
  expect(kindOf("steel").ids(bare, openPlant(bare))).toEqual(["span-1", "span-3"]);
});

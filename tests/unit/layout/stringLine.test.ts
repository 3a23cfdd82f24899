import { describe, expect, test } from "vitest";
import { defaultHubPoleId, lineTree } from "../../../core/layout/lineTree.ts";
import { stringLine } from "../../../core/layout/stringLine.ts";
import { type Route, settingsOf } from "../../../core/model/route.ts";
import { cablePath } from "../../../core/plant/cablePath.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { bareTown, strung, strungTown } from "../../fixtures/layout/townRoute.ts";
import { changed, withRows } from "../../fixtures/route/buildRoute.ts";

const branched = { poleCount: 5, laterals: [{ atPole: 3, poleCount: 3 }], unitsPerSpan: 3 };

function wishes(route: Route, hubPoleId = "") {
  return { strandTypeId: settingsOf(route).strandTypeId, cableTypeId: "", hubPoleId, opticalClassId: "class-b-plus" };
}

describe("a main line with a lateral", () => {
  const route = strungTown(branched);
  const plant = openPlant(route);

  test("has strand in every span, a section a line, and our attachment on every pole once", () => {
    expect([...route.span.values()].every((one) => one.strandSectionId !== null)).toBe(true);
    expect([...route.strandSection.values()].map((one) => one.name)).toEqual(["M", "L1"]);
    expect([...route.attachment.values()].map((one) => one.poleId).sort()).toEqual([...route.pole.keys()].sort());
  });

  test("has a cable from the first pole to the last, and one for the lateral from the junction", () => {
    expect(cablePath(plant, "cable-1").steps.map((one) => one.outPoleId)).toEqual(["M-2", "M-3", "M-4", "M-5"]);
    expect(cablePath(plant, "cable-2").steps.map((one) => one.outPoleId)).toEqual(["L1-1", "L1-2", "L1-3"]);
    expect(cablePath(plant, "cable-2").steps[0]?.inPoleId).toBe("M-3");
  });

  test("is spliced on the hub's side of the junction, beyond where a terminal hangs", () => {
    expect(route.cable.get("cable-2")?.fromClosureId).toBe("closure-1");
    expect(route.closure.get("closure-1")).toMatchObject({ cableId: "cable-1", spanId: "span-2" });
    expect(route.closure.get("closure-1")?.offsetM).toBeCloseTo(40 - 2 * 0.9144, 9);
  });

  test("splices as many fibers as the lateral's terminals will need, lit from the hub", () => {
    const spliced = [...route.fiberUse.values()];
    expect(spliced.length).toBeGreaterThan(0);
    for (const one of spliced)
      expect(one).toMatchObject({ purpose: "lateral", closureId: "closure-1", lateralCableId: "cable-2" });
    expect(spliced.every((one) => one.feedId !== null)).toBe(true);
  });

  test("gets the smallest cable that serves the units in reach", () => {
    expect([...route.cable.values()].map((one) => one.cableTypeId)).toEqual(["cable-type-12", "cable-type-12"]);
    const long = strungTown({ ...branched, poleCount: 20, unitsPerSpan: 6 });
    expect(long.cable.get("cable-1")?.cableTypeId).toBe("cable-type-48");
    expect(strung(bareTown(branched), "cable-type-144").cable.get("cable-2")?.cableTypeId).toBe("cable-type-144");
  });

  test("is not strung a second time", () => {
    expect(stringLine(route, wishes(route))).toMatchObject({ ok: false, fault: { code: "strung" } });
  });
});

test("a strand of ours that is there keeps its height", () => {
  const bare = bareTown(branched);
  const ours = {
    id: "ours",
    poleId: "M-2",
    owner: "Us",
    kind: "ourStrand" as const,
    heightM: 7,
    voltageV: 0,
    note: "",
    bonded: false,
  };
  const route = strung(withRows(bare, "attachment", [ours]));
  const there = [...route.attachment.values()].filter((one) => one.poleId === "M-2");
  expect(there).toEqual([ours]);
});

test("two laterals at one pole share a closure", () => {
  const route = strungTown({ ...branched, laterals: [branched.laterals, branched.laterals].flat() });
  expect(route.closure.size).toBe(1);
  expect([...route.cable.values()].map((one) => one.fromClosureId)).toEqual([null, "closure-1", "closure-1"]);
});

test("from a hub in the middle the main line goes both ways without a splice", () => {
  const bare = bareTown(branched);
  const rows = stringLine(bare, wishes(bare, "M-3"));
  if (!rows.ok) throw new Error(rows.fault.what);
  const cables = rows.value.flatMap((row) => (row.table === "cable" && row.after ? [row.after] : []));
  expect(cables.map((one) => one.fromClosureId)).toEqual([null, null, null]);
});

test("a lateral of a lateral is spliced on the lateral", () => {
  const bare = bareTown(branched);
  const pole = bare.pole.get("L1-3");
  const span = bare.span.get("span-1");
  if (!pole || !span) throw new Error("the town has no lateral");
  const more = withRows(bare, "pole", [{ ...pole, id: "K-1", tag: "K1", line: "K", eastM: pole.eastM + 30 }], "span", [
    { ...span, id: "span-k", fromPoleId: "L1-2", toPoleId: "K-1" },
  ]);
  const route = strung(more);
  expect(route.closure.get("closure-2")).toMatchObject({ cableId: "cable-2" });
  expect(route.cable.get("cable-3")).toMatchObject({ name: "K", fromClosureId: "closure-2" });
});

test("a loop is refused and its pole named", () => {
  const bare = bareTown(branched);
  const span = bare.span.get("span-1");
  if (!span) throw new Error("no span");
  const looped = withRows(bare, "span", [{ ...span, id: "span-x", fromPoleId: "L1-3", toPoleId: "M-5" }]);
  const answer = stringLine(looped, wishes(looped));
  expect(answer).toMatchObject({ ok: false, fault: { code: "loop" } });
  expect(answer.ok ? "" : answer.fault.what).toMatch(/loop at pole (M5|L13)/);
});

test("without poles in line there is nothing to string", () => {
  const bare = { ...bareTown(branched), span: new Map() };
  expect(stringLine(bare, wishes(bare))).toMatchObject({ ok: false, fault: { code: "no-span" } });
});

test("the hub is the first pole by order of the longest line", () => {
  const bare = bareTown(branched);
  expect(defaultHubPoleId(openPlant(bare))).toBe("M-1");
  const turned = changed(changed(bare, "pole", "M-1", { order: 9 }), "pole", "M-5", { order: 1 });
  expect(defaultHubPoleId(openPlant(turned))).toBe("M-5");
});

test("where poles name no line the longest way is the main line", () => {
  const bare = bareTown({ poleCount: 5, laterals: [{ atPole: 2, poleCount: 2 }] });
  const nameless = [...bare.pole.keys()].reduce((route, id) => changed(route, "pole", id, { line: "" }), bare);
  const lines = lineTree(openPlant(nameless), "M-1");
  expect(lines.ok && lines.value.map((one) => `${one.name}: ${one.steps.length}`)).toEqual(["Line 1: 4", "Line 2: 2"]);
});

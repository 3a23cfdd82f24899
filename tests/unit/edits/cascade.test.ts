import { expect, test } from "vitest";
import { granted, refusal } from "../../fixtures/layout/asking.ts";
import { strungTown } from "../../fixtures/layout/townRoute.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

test("a pole goes with its attachments, its spans and all that hangs in them", () => {
  const route = granted(smallRoute(), "row.remove", { table: "pole", id: "pole-2" });
  expect([...route.pole.keys()]).toEqual(["pole-1", "pole-3", "pole-4"]);
  expect([...route.span.keys()]).toEqual(["span-3"]);
  expect([...route.attachment.values()].some((one) => one.poleId === "pole-2")).toBe(false);
  expect([...route.terminal.keys()]).toEqual(["terminal-2"]);
  expect([...route.crossing.keys(), ...route.cableRun.keys()]).toEqual(["run-3"]);
});

test("a strand section leaves its spans without strand", () => {
  const route = granted(smallRoute(), "row.remove", { table: "strandSection", id: "section-1" });
  expect(new Set([...route.span.values()].map((one) => one.strandSectionId))).toEqual(new Set([null]));
});

test("a hub output leaves the fibers it lit dark", () => {
  const route = granted(smallRoute(), "row.remove", { table: "feed", id: "feed-1" });
  expect(route.fiberUse.get("use-1")).toMatchObject({ feedId: null, fiber: 1 });
});

test("a lateral cable goes with its way and the fibers spliced to it on the main cable", () => {
  const town = strungTown({ poleCount: 6, laterals: [{ atPole: 3, poleCount: 3 }], unitsPerSpan: 4 });
  expect([...town.fiberUse.values()].some((one) => one.lateralCableId === "cable-2")).toBe(true);
  const route = granted(town, "row.remove", { table: "cable", id: "cable-2" });
  expect([...route.fiberUse.values()].filter((one) => one.purpose === "lateral")).toEqual([]);
  expect([...route.cableRun.values()].some((one) => one.cableId === "cable-2")).toBe(false);
});

test("what the settings lean on stays", () => {
  expect(refusal(smallRoute(), "row.remove", { table: "dropType", id: "drop-flat" })).toMatchObject({ code: "in-use" });
});

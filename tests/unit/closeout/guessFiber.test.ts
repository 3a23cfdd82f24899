import { expect, test } from "vitest";
import { guessFiber } from "../../../core/closeout/guessFiber.ts";
import type { TraceGeneral } from "../../../core/traces/trace.ts";

const names = {
  cables: [
    { id: "cable-1", name: "C-1", fiberCount: 144 },
    { id: "cable-2", name: "Mill Rd", fiberCount: 24 },
  ],
  hubs: ["Hub output F1"],
  places: ["T9", "S-2"],
};

const general = (told: Partial<TraceGeneral>): TraceGeneral => ({
  cableId: "",
  fiberId: "",
  wavelengthNm: 1550,
  locationA: "",
  locationB: "",
  cableCode: "",
  condition: "",
  operator: "",
  comment: "",
  ...told,
});

test.each([
  ["as the instrument was told", "0001.sor", { cableId: "C1", fiberId: "001" }, "cable-1", 1],
  ["by the file's name alone", "C-1_F013_1550.sor", {}, "cable-1", 13],
  ["by a number that is no wavelength", "C1-1310-0044.SOR", {}, "cable-1", 44],
  ["by a name of two words", "mill rd fiber 7.sor", {}, "cable-2", 7],
  ["by both, where they agree", "C1 fiber 12.sor", { cableId: "c-1", fiberId: "F12" }, "cable-1", 12],
])("a fiber is known %s", (_, fileName, told, cableId, fiber) => {
  expect(guessFiber(fileName, general(told), names)).toMatchObject({ cableId, fiber });
});

test.each([
  ["file and instrument tell different fibers", "C1 fiber 12.sor", { fiberId: "13" }],
  ["two numbers could be it", "C1 12 13.sor", {}],
  ["the cable has no such fiber", "mill rd fiber 99.sor", {}],
  ["nothing tells a fiber", "C1.sor", {}],
])("a fiber stays open where %s", (_, fileName, told) => {
  expect(guessFiber(fileName, general(told), names).fiber).toBeNull();
});

test("a cable stays open where file and instrument tell different ones, or none of several is told", () => {
  expect(guessFiber("Mill Rd F1.sor", general({ cableId: "C-1" }), names).cableId).toBeNull();
  expect(guessFiber("F1.sor", null, names)).toMatchObject({ cableId: null, fiber: null });
});

test("where the route has one cable it is that one, unless the instrument was told another", () => {
  const one = { ...names, cables: names.cables.slice(0, 1) };
  expect(guessFiber("F21.sor", null, one)).toMatchObject({ cableId: "cable-1", fiber: 21 });
  expect(guessFiber("F21.sor", general({ cableId: "Backbone 7" }), one).cableId).toBeNull();
});

test("the end is known where the instrument was told where it stands, and else stays open", () => {
  const end = (locationA: string) => guessFiber("C1 F1.sor", general({ locationA }), names).fromEnd;
  expect([end("HUB"), end("hub output f1"), end("t9"), end("somewhere"), end("")]).toEqual([
    "feed",
    "feed",
    "far",
    null,
    null,
  ]);
});

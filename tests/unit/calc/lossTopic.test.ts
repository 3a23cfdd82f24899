import { expect, it } from "vitest";
import { lossTopic } from "../../../core/calc/lossTopic.ts";

const path = { segments: [{ lengthM: 10000, dbPerKm: 0.35 }], events: [{ kind: "splitter", lossDb: 10.5, count: 1 }] };

it("without a class there is a loss and no margin", () => {
  expect(lossTopic.run(path)).toEqual({ ok: true, value: { lossDb: 14 } });
});

it("with a class there is a margin to each end that was given", () => {
  expect(lossTopic.run({ ...path, marginDb: 3, classMinDb: 13, classMaxDb: 28 })).toEqual({
    ok: true,
    value: { lossDb: 17, marginToMaxDb: 11, marginToMinDb: 4 },
  });
  expect(lossTopic.run({ ...path, classMaxDb: 28 })).toEqual({ ok: true, value: { lossDb: 14, marginToMaxDb: 14 } });
});

it("a class whose least loss is above its largest is refused", () => {
  expect(lossTopic.run({ ...path, classMinDb: 30, classMaxDb: 10 })).toMatchObject({
    ok: false,
    fault: { code: "out-of-range" },
  });
});

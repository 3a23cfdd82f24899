import { expect, it } from "vitest";
import { stringingTopic } from "../../../core/calc/stringingTopic.ts";

const basis = {
  spansM: [40, 60],
  temperaturesC: [15, 30],
  areaM2: 2.27e-5,
  modulusPa: 1.655e11,
  expansionPerC: 1.152e-5,
  weightNPerM: 3,
  limit: { weightNPerM: 3, temperatureC: 15, sagFrac: 0.01 },
};

it("clamped spans each meet the limit by themselves", () => {
  expect(stringingTopic.run({ ...basis, poles: "clamped" })).toMatchObject({
    ok: true,
    value: {
      rows: [
        {
          temperatureC: 15,
          cells: [
            { spanM: 40, horizontalN: expect.closeTo(1500, 6), sagM: expect.closeTo(0.4, 9) },
            { spanM: 60, horizontalN: expect.closeTo(2250, 6), sagM: expect.closeTo(0.6, 9) },
          ],
        },
        { temperatureC: 30 },
      ],
    },
  });
});

it("spans that slip share one tension, and the crew can time it", () => {
  const limit = { weightNPerM: 3, temperatureC: 15, horizontalN: 1500 };
  expect(stringingTopic.run({ ...basis, limit, poles: "slipping" })).toMatchObject({
    value: {
      rows: [
        {
          cells: [
            { horizontalN: expect.closeTo(1500, 6), tenReturnsS: expect.closeTo(11.425, 3) },
            { horizontalN: expect.closeTo(1500, 6), sagM: expect.closeTo(0.9, 9) },
          ],
        },
        {},
      ],
    },
  });
});

it.each([
  { weightNPerM: 3, temperatureC: 15 },
  { weightNPerM: 3, temperatureC: 15, sagFrac: 0.01, horizontalN: 1500 },
])("a limit must be a sag or a tension, and not both", (limit) => {
  expect(stringingTopic.run({ ...basis, limit, poles: "clamped" })).toMatchObject({
    fault: { what: "limit must have either sagFrac or horizontalN." },
  });
});

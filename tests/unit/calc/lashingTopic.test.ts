import { expect, it } from "vitest";
import { lashingTopic } from "../../../core/calc/lashingTopic.ts";

it("each cable lashed on sags the strand further and pulls it harder", () => {
  const reply = lashingTopic.run({
    spanM: 45.72,
    areaM2: 2.27e-5,
    modulusPa: 1.655e11,
    expansionPerC: 1.152e-5,
    pulled: { weightNPerM: 1.766, horizontalN: 1009.2, temperatureC: 15.6 },
    lashings: [
      { addedNPerM: 1.182, temperatureC: 15.6 },
      { addedNPerM: 1.182, temperatureC: 15.6, pointLoads: [{ atM: 0.9144, weightN: 60 }] },
    ],
  });
  expect(reply).toMatchObject({
    ok: true,
    value: { stages: [{ weightNPerM: expect.closeTo(2.948, 12), sagM: expect.closeTo(0.543, 3) }, {}] },
  });
  const [first, second] = Object(reply).value.stages;
  expect(second.horizontalN).toBeGreaterThan(first.horizontalN);
  expect(second.sagM).toBeGreaterThan(first.sagM);
});

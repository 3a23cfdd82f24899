import { expect, it } from "vitest";
import { profileTopic } from "../../../core/calc/profileTopic.ts";

it("a level span under no more than its own weight has its heights below its supports", () => {
  const asked = { spanM: 40, nearHeightM: 7, farHeightM: 7, weightNPerM: 3, horizontalN: 1500, stationsM: [0, 10, 20] };
  expect(profileTopic.run(asked)).toMatchObject({
    ok: true,
    value: {
      stations: [
        { atM: 0, sagM: 0, heightM: 7 },
        { atM: 10, sagM: expect.closeTo(0.3, 12), heightM: expect.closeTo(6.7, 12) },
        { atM: 20, sagM: expect.closeTo(0.4, 12), heightM: expect.closeTo(6.6, 12) },
      ],
      lowestAtM: 20,
      lowestM: expect.closeTo(6.6, 12),
      nearDownN: 60,
      farDownN: 60,
      nearSlopeDeg: expect.closeTo(2.2906, 4),
    },
  });
});

it("a span without heights hangs below its near support", () => {
  const asked = {
    spanM: 40,
    weightNPerM: 3,
    horizontalN: 1500,
    pointLoads: [{ atM: 20, weightN: 30 }],
    stationsM: [20],
  };
  expect(profileTopic.run(asked)).toMatchObject({
    value: { stations: [{ heightM: expect.closeTo(-0.6, 12) }], nearDownN: 75 },
  });
});

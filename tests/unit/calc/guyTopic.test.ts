import { expect, it } from "vitest";
import { guyTopic } from "../../../core/calc/guyTopic.ts";

it("a dead end pulls back the way the line came, and a guy at 45 degrees bears it 1.41 times", () => {
  expect(guyTopic.run({ behindN: 1000, aheadN: 0, angleDeg: 0, heightM: 7, leadM: 7 })).toEqual({
    ok: true,
    value: {
      pullN: 1000,
      directionDeg: 180,
      horizontalN: 1000,
      guyN: expect.closeTo(1414.2, 1),
      verticalN: 1000,
      guySlopeDeg: expect.closeTo(45, 9),
    },
  });
});

it("a guy fixed below the strand has less leverage and bears more", () => {
  expect(
    guyTopic.run({ behindN: 1000, aheadN: 1000, angleDeg: 60, heightM: 8, guyHeightM: 6.4, leadM: 8 }),
  ).toMatchObject({
    value: {
      pullN: expect.closeTo(1000, 9),
      directionDeg: expect.closeTo(120, 9),
      horizontalN: expect.closeTo(1250, 9),
      verticalN: expect.closeTo(1000, 9),
    },
  });
});

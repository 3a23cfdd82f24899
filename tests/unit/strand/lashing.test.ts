import { expect, it } from "vitest";
import { changeOfState } from "../../../core/strand/changeOfState.ts";
import { lashOn } from "../../../core/strand/lashing.ts";

const pulled = {
  spanM: 45,
  axialStiffnessN: 3.76e6,
  expansionPerDegC: 1.15e-5,
  from: { weightNPerM: 1.8, temperatureDegC: 15, horizontalN: 1000 },
};

it("a second cable over the first hangs as both lashed on at once", () => {
  const stages = lashOn(pulled, [
    { addedNPerM: 1.2, temperatureDegC: 30 },
    { addedNPerM: 1.5, temperatureDegC: 5 },
  ]);
  const atOnce = lashOn(pulled, [{ addedNPerM: 2.7, temperatureDegC: 5 }]);
  if (!stages.ok || !atOnce.ok) throw new Error("did not settle");
  expect(stages.value[1]?.horizontalN).toBeCloseTo(atOnce.value[0]?.horizontalN ?? 0, 9);
});

it("overlashing a loaded strand keeps its terminals hanging unless told otherwise", () => {
  const pointLoads = [{ atM: 0.9, weightN: 60 }];
  const stages = lashOn(pulled, [
    { addedNPerM: 1.2, temperatureDegC: 15, pointLoads },
    { addedNPerM: 1.5, temperatureDegC: 15 },
  ]);
  const direct = changeOfState({ ...pulled, to: { weightNPerM: 4.5, temperatureDegC: 15, pointLoads } });
  if (!stages.ok || !direct.ok) throw new Error("did not settle");
  expect(stages.value[1]).toMatchObject({ pointLoads, horizontalN: direct.value.horizontalN });
});

it("a stage that does not settle ends the work with its fault", () => {
  expect(lashOn({ ...pulled, spanM: 1e200 }, [{ addedNPerM: 1, temperatureDegC: 15 }])).toMatchObject({ ok: false });
  expect(() => lashOn(pulled, [{ addedNPerM: -1, temperatureDegC: 15 }])).toThrow(RangeError);
});

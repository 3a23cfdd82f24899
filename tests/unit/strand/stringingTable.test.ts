import { expect, it } from "vitest";
import { type StringingTableBasis, stringingTable } from "../../../core/strand/stringingTable.ts";

const basis: StringingTableBasis = {
  spansM: [30, 45, 60],
  temperaturesDegC: [0, 15, 30],
  axialStiffnessN: 3.76e6,
  expansionPerDegC: 1.15e-5,
  weightNPerM: 3,
  limit: { weightNPerM: 3, temperatureDegC: 15, sagFrac: 0.01 },
  poles: "clamped",
};

it("clamped spans all sag 1 % at the temperature of the limit", () => {
  const table = stringingTable(basis);
  if (!table.ok) throw new Error(table.fault.what);
  expect(table.value[1]?.map(({ sagM }) => Number(sagM.toFixed(9)))).toEqual([0.3, 0.45, 0.6]);
});

it("slipping spans sag as the squares of their lengths on one tension", () => {
  const table = stringingTable({ ...basis, poles: "slipping" });
  if (!table.ok) throw new Error(table.fault.what);
  for (const [short, , long] of table.value) {
    expect(long?.horizontalN).toBe(short?.horizontalN);
    expect((long?.sagM ?? 0) / (short?.sagM ?? 1)).toBeCloseTo(4, 9);
  }
});

it("a bare strand pulled by the table comes to its limit once its cable hangs on it", () => {
  const limit = { weightNPerM: 6, temperatureDegC: -10, horizontalN: 4000 };
  const bare = stringingTable({ ...basis, spansM: [45], limit });
  if (!bare.ok) throw new Error(bare.fault.what);
  const pulledN = bare.value[1]?.[0]?.horizontalN ?? 0;
  const back = stringingTable({
    ...basis,
    spansM: [45],
    temperaturesDegC: [-10],
    weightNPerM: 6,
    limit: { weightNPerM: 3, temperatureDegC: 15, horizontalN: pulledN },
  });
  expect(back).toMatchObject({ value: [[{ horizontalN: expect.closeTo(4000, 6) }]] });
});

it("a cell that does not settle is told", () => {
  expect(stringingTable({ ...basis, spansM: [1e200] })).toMatchObject({ ok: false });
});

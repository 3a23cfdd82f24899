import { expect, test } from "vitest";
import { decodeRow, encodeRow, shapeOf, sqlName } from "../../../db/columns.ts";
import { poleNumbered } from "../../contract/db/smallRoute.ts";

test("a column is named as its field, unit and all", () => {
  expect(["offsetM", "windPa", "upNm", "areaM2", "expansionPerC", "livingUnit"].map(sqlName)).toEqual([
    "offset_m",
    "wind_pa",
    "up_nm",
    "area_m2",
    "expansion_per_c",
    "living_unit",
  ]);
});

test("yes and no are kept as 1 and 0, nothing as null, and all come back", () => {
  const pole = poleNumbered(3);
  const values = encodeRow("pole", pole);
  const { columns } = shapeOf("pole");
  const kept = Object.fromEntries(columns.map(({ name }, index) => [name, values[index]]));
  expect(kept).toMatchObject({ id: "pole-3", east_m: 120, ground_m: null, terminal_allowed: 1 });
  expect(decodeRow(columns, values)).toEqual(pole);
});

test("a yes-or-no column that holds neither is left for the schema to refuse", () => {
  const { columns } = shapeOf("pole");
  const values = encodeRow("pole", poleNumbered(1)).map((value, index) => (columns[index]?.isBoolean ? 2 : value));
  expect(decodeRow(columns, values).terminalAllowed).toBe(2);
});

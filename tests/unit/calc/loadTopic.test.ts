import { expect, it } from "vitest";
import { loadTopic } from "../../../core/calc/loadTopic.ts";
import { lineLoad } from "../../../core/strand/lineLoad.ts";
import { shippedDistricts } from "../../../electron/host/newRoute.ts";

const bundle = { diameterM: 0.017272, weightNPerM: 2.948 };
const catalogue = { districts: shippedDistricts("assets") };
const around = { catalogue };

it("load answers what the program's own kernel computes", () => {
  const iced = { ...bundle, iceM: 0.0127, windPa: 191.5, constantNPerM: 4.378 };
  expect(loadTopic.run(iced)).toEqual({ ok: true, value: lineLoad(iced) });
});

it("load takes ice, wind and constant from a district by its name, and says where they are from and that they are unverified", () => {
  for (const district of catalogue.districts) {
    const answer = loadTopic.run({ ...bundle, district: district.name.toUpperCase() }, around);
    expect(answer).toEqual({
      ok: true,
      value: {
        ...lineLoad({ ...district, ...bundle }),
        district: {
          name: district.name,
          temperatureC: district.temperatureDegC,
          source: expect.stringContaining(district.basisDocument),
          mark: district.basisMark,
        },
      },
    });
  }
});

it("load refuses a district nobody knows and names those there are, a district beside figures, and neither", () => {
  expect(loadTopic.run({ ...bundle, district: "Polar" }, around)).toMatchObject({
    ok: false,
    fault: {
      code: "bad-field",
      where: "load.district",
      what: 'There is no loading district called "Polar".',
      mend: expect.stringContaining("NESC heavy; NESC medium"),
    },
  });
  expect(loadTopic.run({ ...bundle, district: "NESC heavy", iceM: 0.01 }, around)).toMatchObject({
    fault: { code: "bad-field", what: "iceM is given beside a loading district." },
  });
  expect(loadTopic.run({ ...bundle, iceM: 0.01 }, around)).toMatchObject({
    fault: { code: "missing-field", where: "load.windPa", what: "windPa is missing." },
  });
});

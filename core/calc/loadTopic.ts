import { z } from "zod";
import { type LineLoadCase, lineLoad } from "../strand/lineLoad.ts";
import type { Answer } from "./answer.ts";
import { figure, notNegative, positive } from "./fields.ts";
import { type CalcCatalogue, type CalcDistrict, defineSearchTopic } from "./topic.ts";

const request = z.strictObject({
  diameterM: positive("outside diameter that ice and wind see, m"),
  weightNPerM: notNegative("weight without ice, N/m"),
  district: z.string().describe("name of a loading district of the catalogue, instead of the four below").optional(),
  iceM: notNegative("radial thickness of ice, m").optional(),
  iceDensityKgPerM3: notNegative("density of the ice, kg/m3; 913 where left out").optional(),
  windPa: notNegative("wind pressure on the projected area, Pa").optional(),
  constantNPerM: notNegative("additive constant of the loading district, N/m; 0 where there is none").optional(),
});

export const loadTopic = defineSearchTopic({
  id: "load",
  title: "Load per length of a strand bundle under ice and wind",
  request,
  reply: z.strictObject({
    iceNPerM: figure("weight of the ice, N/m"),
    verticalNPerM: figure("weight with ice, N/m"),
    windNPerM: figure("wind on the iced diameter, N/m"),
    resultantNPerM: figure("root of the sum of the squares of vertical and wind, N/m"),
    totalNPerM: figure("resultant plus the constant, N/m; for tension only"),
    swingRad: figure("swing from the vertical, rad; atan(wind / vertical)"),
    district: z
      .strictObject({
        name: z.string(),
        temperatureC: figure("at which this load acts, degC"),
        source: z.string().describe("where the district's figures are from"),
        mark: z.string().describe("seen, memory (unverified: not read again), practice or computed"),
      })
      .describe("only where a district was named")
      .optional(),
  }),
  example: { diameterM: 0.017272, weightNPerM: 2.948, iceM: 0.0127, windPa: 191.5, constantNPerM: 4.378 },
  answer({ diameterM, weightNPerM, district, ...given }, { catalogue }) {
    const weather = district === undefined ? weatherGiven(given) : weatherNamed(district, given, catalogue);
    if (!weather.ok) return weather;
    const { named, ...acting } = weather.value;
    const load = lineLoad({ diameterM, weightNPerM, ...acting });
    return { ok: true, value: named ? { ...load, district: told(named) } : load };
  },
});

type Given = Pick<z.output<typeof request>, "iceM" | "iceDensityKgPerM3" | "windPa" | "constantNPerM">;
type Weather = Omit<LineLoadCase, "diameterM" | "weightNPerM"> & { readonly named: CalcDistrict | null };

function weatherGiven({ iceM, iceDensityKgPerM3, windPa, constantNPerM }: Given): Answer<Weather> {
  if (iceM === undefined) return missing("iceM");
  if (windPa === undefined) return missing("windPa");
  if (constantNPerM === undefined) return missing("constantNPerM");
  return { ok: true, value: { iceM, iceDensityKgPerM3, windPa, constantNPerM, named: null } };
}

function missing(field: string): Answer<never> {
  const mend = "Give a number, or the name of a loading district as district.";
  return { ok: false, fault: { code: "missing-field", what: `${field} is missing.`, where: `load.${field}`, mend } };
}

function weatherNamed(name: string, given: Given, { districts }: CalcCatalogue): Answer<Weather> {
  const [twice] = Object.entries(given).flatMap(([field, value]) => (value === undefined ? [] : [field]));
  if (twice !== undefined)
    return refused(`${twice} is given beside a loading district.`, "Give the district or its figures, not both.");
  const wanted = name.trim().toLowerCase();
  const named = districts.find((one) => one.name.toLowerCase() === wanted);
  if (!named)
    return refused(
      `There is no loading district called "${name}".`,
      `Use one of ${districts.map((one) => one.name).join("; ")}.`,
    );
  const { iceM, iceDensityKgPerM3, windPa, constantNPerM } = named;
  return { ok: true, value: { iceM, iceDensityKgPerM3, windPa, constantNPerM, named } };
}

function refused(what: string, mend: string): Answer<never> {
  return { ok: false, fault: { code: "bad-field", what, where: "load.district", mend } };
}

function told({ name, temperatureDegC, basisDocument, basisClause, basisEdition, basisMark }: CalcDistrict) {
  const source = [basisDocument, basisClause, basisEdition].filter(Boolean).join(", ");
  return { name, temperatureC: temperatureDegC, source, mark: basisMark };
}

import { z } from "zod";
import { returnWaveS } from "../strand/returnWave.ts";
import { stringingTable } from "../strand/stringingTable.ts";
import { figure, positive } from "./fields.ts";
import { loadStateFields, strandFields, strandOf } from "./strandFields.ts";
import { defineSearchTopic } from "./topic.ts";

const returnCount = 10;

export const stringingTopic = defineSearchTopic({
  id: "stringing",
  title: "Stringing table: initial sag and tension by temperature and span",
  request: z.strictObject({
    spansM: z.array(positive("m")).min(1).describe("level spans, m, one a column"),
    temperaturesC: z.array(figure("degC")).min(1).describe("degC, one a row"),
    ...strandFields,
    weightNPerM: positive("what hangs while the strand is pulled: itself, or itself with its cable, N/m"),
    limit: z
      .strictObject({
        ...loadStateFields,
        sagFrac: positive("midspan sag as part of the span; this or horizontalN").optional(),
        horizontalN: positive("horizontal component of the tension, N; this or sagFrac").optional(),
      })
      .describe("the one condition that all else follows from"),
    poles: z
      .enum(["clamped", "slipping"])
      .describe("clamped: each span meets the limit by itself; slipping: one tension, and the ruling span meets it"),
  }),
  reply: z.strictObject({
    rows: z.array(
      z.strictObject({
        temperatureC: figure("degC"),
        cells: z.array(
          z.strictObject({
            spanM: figure("m"),
            horizontalN: figure("horizontal component of the tension to pull to, N"),
            sagM: figure("vertical distance at midspan below the chord, m"),
            tenReturnsS: figure("time of ten returns of a wave on the strand at that sag, s"),
          }),
        ),
      }),
    ),
  }),
  example: {
    spansM: [36.576, 45.72, 54.864],
    temperaturesC: [0, 15, 30],
    areaM2: 2.27e-5,
    modulusPa: 1.655e11,
    expansionPerC: 1.152e-5,
    weightNPerM: 1.766,
    limit: { weightNPerM: 2.948, temperatureC: 15.6, sagFrac: 0.01 },
    poles: "clamped",
  },
  answer({ spansM, temperaturesC, weightNPerM, limit, poles, ...strand }) {
    const table = stringingTable({
      spansM,
      temperaturesDegC: temperaturesC,
      ...strandOf(strand),
      weightNPerM,
      limit: { weightNPerM: limit.weightNPerM, temperatureDegC: limit.temperatureC, ...oneOf(limit) },
      poles,
    });
    if (!table.ok) return table;
    const rows = temperaturesC.map((temperatureC, row) => ({
      temperatureC,
      cells: (table.value[row] ?? []).map((cell, column) => ({
        spanM: spansM[column] ?? 0,
        ...cell,
        tenReturnsS: returnWaveS(cell.sagM, returnCount),
      })),
    }));
    return { ok: true, value: { rows } };
  },
});

function oneOf({ sagFrac, horizontalN }: { sagFrac?: number | undefined; horizontalN?: number | undefined }) {
  if (sagFrac !== undefined && horizontalN === undefined) return { sagFrac };
  if (horizontalN !== undefined && sagFrac === undefined) return { horizontalN };
  throw new RangeError("limit must have either sagFrac or horizontalN");
}

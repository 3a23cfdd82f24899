import { z } from "zod";
import { readTrace } from "../traces/readTrace.ts";
import { figure } from "./fields.ts";
import { defineSearchTopic } from "./topic.ts";

const unknown = "; null where it could not be read";

export const traceTopic = defineSearchTopic({
  id: "trace",
  title: "What a reflectometer's file says: how it was taken, its events, its sums",
  request: z.strictObject({
    bytes: z.array(z.int().min(0).max(255)).describe("the file, byte by byte; `calc trace FILE` reads them from it"),
  }),
  reply: z.strictObject({
    version: z.string().describe("issue of the layout"),
    wavelengthNm: figure(`wavelength, nm${unknown}`).nullable(),
    groupIndex: figure(`group index of the fiber as the instrument was told${unknown}`).nullable(),
    rangeKm: figure(`length of the curve, km${unknown}`).nullable(),
    events: z.array(
      z.strictObject({
        distanceM: figure("from the instrument, m"),
        spliceLossDb: figure("dB; negative where the trace rises"),
        reflectanceDb: figure("dB; null where the instrument did not tell").nullable(),
        slopeDbPerKm: figure("of the fiber before it, dB/km"),
        code: z.string().describe("kind, how it was found, landmark and loss method, as the file has them"),
      }),
    ),
    totalLossDb: figure(`of the whole way, dB${unknown}`).nullable(),
    checksum: z.strictObject({
      stored: z.int().nullable(),
      computed: z.int().nullable(),
      fits: z.boolean().describe("some instruments write a sum by a rule of their own"),
    }),
    damages: z
      .array(z.strictObject({ block: z.string(), what: z.string() }))
      .describe("what could not be read; the rest was"),
  }),
  example: { bytes: [...smallestFile()] },
  answer({ bytes }) {
    const read = readTrace(Uint8Array.from(bytes));
    if (!read.ok) return read;
    const { version, fixed, events, link, points, checksum, damages } = read.value;
    return {
      ok: true,
      value: {
        version,
        wavelengthNm: fixed?.wavelengthNm ?? null,
        groupIndex: fixed?.groupIndex ?? null,
        rangeKm: fixed && points ? (points.spacingM * points.levelsDb.length) / 1000 : null,
        events: events.map(({ distanceM, spliceLossDb, reflectanceDb, slopeDbPerKm, code }) => ({
          distanceM,
          spliceLossDb,
          reflectanceDb,
          slopeDbPerKm,
          code,
        })),
        totalLossDb: link?.totalLossDb ?? null,
        checksum: { ...checksum },
        damages: damages.map((one) => ({ ...one })),
      },
    };
  },
});

/** A file with a map of one empty block: every other block is told as missing. */
function smallestFile(): readonly number[] {
  const letters = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
  const entry = [...letters("Cksum\0"), 200, 0, 8, 0, 0, 0];
  const map = [...letters("Map\0"), 200, 0, 24, 0, 0, 0, 2, 0, ...entry];
  return [...map, ...letters("Cksum\0"), 0, 0];
}

import { z } from "zod";
import { marginToMaxDb, marginToMinDb, pathLossDb } from "../fiber/lossBudget.ts";
import { figure, notNegative } from "./fields.ts";
import { defineTopic } from "./topic.ts";

export const lossTopic = defineTopic({
  id: "loss",
  title: "Loss of a light path, and its margins to an optical class",
  request: z.strictObject({
    segments: z.array(
      z.strictObject({
        lengthM: notNegative("length of fiber, m"),
        dbPerKm: notNegative("loss of the fiber at the wavelength asked about, dB/km"),
      }),
    ),
    events: z.array(
      z.strictObject({
        kind: z.string().describe("what loses the light: splice, connection, splitter"),
        lossDb: notNegative("loss of each, dB"),
        count: z.int().min(0).describe("how many of them"),
      }),
    ),
    marginDb: notNegative("kept for repair and ageing, counted as loss, dB; 0 where left out").optional(),
    classMinDb: figure("least loss the optical class allows, dB").optional(),
    classMaxDb: figure("largest loss the optical class allows, dB").optional(),
  }),
  reply: z.strictObject({
    lossDb: figure("fiber, events and margin together, dB"),
    marginToMaxDb: figure("classMaxDb less lossDb, dB; negative: too little light").optional(),
    marginToMinDb: figure(
      "lossDb less classMinDb, dB; negative: too much light. Leave marginDb out to ask about the first day",
    ).optional(),
  }),
  example: {
    segments: [{ lengthM: 7650, dbPerKm: 0.35 }],
    events: [
      { kind: "splice", lossDb: 0.1, count: 6 },
      { kind: "connection", lossDb: 0.3, count: 4 },
      { kind: "splitter 1x4", lossDb: 7.3, count: 1 },
      { kind: "splitter 1x8", lossDb: 10.5, count: 1 },
    ],
    classMinDb: 13,
    classMaxDb: 28,
  },
  answer({ segments, events, marginDb, classMinDb, classMaxDb }) {
    if (classMinDb !== undefined && classMaxDb !== undefined && classMinDb > classMaxDb) {
      throw new RangeError(`classMinDb is ${classMinDb}; it must not be above classMaxDb, ${classMaxDb}`);
    }
    const lossDb = pathLossDb(segments, events, marginDb ?? 0);
    return {
      lossDb,
      ...(classMaxDb === undefined ? {} : { marginToMaxDb: marginToMaxDb(lossDb, classMaxDb) }),
      ...(classMinDb === undefined ? {} : { marginToMinDb: marginToMinDb(lossDb, classMinDb) }),
    };
  },
});

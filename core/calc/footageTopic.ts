import { z } from "zod";
import { countSheath } from "../closeout/sheathMarks.ts";
import { figure, notNegative } from "./fields.ts";
import { defineTopic } from "./topic.ts";

export const footageTopic = defineTopic({
  id: "footage",
  title: "Length marks read along a cable's sheath, against the drawing",
  request: z.strictObject({
    marks: z
      .array(
        z.strictObject({
          place: z.string().describe("pole or terminal"),
          drawnM: notNegative("sheath from the feed end to it as drawn, coils counted, m; in order along the cable"),
          figure: notNegative("the mark as it is printed"),
        }),
      )
      .min(1),
    unitM: z.number().positive().describe("what one of the printed figures stands for, m; 0.3048 for feet"),
    toleranceFrac: notNegative("share of a section's drawn length it may differ by"),
    toleranceM: notNegative("and so many metres more"),
    reelLengthM: notNegative("length delivered, m").optional(),
  }),
  reply: z.strictObject({
    counts: z
      .enum(["up", "down"])
      .nullable()
      .describe("from the feed end; null where fewer than two marks are believed"),
    usedM: figure("between the first and the last mark believed, m"),
    drawnM: figure("the same as drawn, m"),
    moreM: figure("used less drawn: over 0 stored, under 0 missing, m"),
    remainderM: figure("of the reel, m: what was delivered less what is used between the marks").optional(),
    sections: z.array(
      z.strictObject({
        from: z.string(),
        to: z.string(),
        usedM: figure("m"),
        drawnM: figure("m"),
        moreM: figure("used less drawn, m"),
        isAsDrawn: z.boolean(),
      }),
    ),
    doubted: z.array(
      z.strictObject({
        place: z.string(),
        figure: figure("as read"),
        perhaps: figure("the one figure with two neighbouring digits exchanged that fits").nullable(),
      }),
    ),
  }),
  example: {
    marks: [
      { place: "M1", drawnM: 0, figure: 12000 },
      { place: "M2", drawnM: 50, figure: 12614 },
      { place: "M3", drawnM: 100, figure: 12328 },
    ],
    unitM: 0.3048,
    toleranceFrac: 0.01,
    toleranceM: 1,
  },
  answer({ marks, unitM, toleranceFrac, toleranceM, reelLengthM }) {
    const { counts, sections, doubted } = countSheath(marks, { unitM, toleranceFrac, toleranceM });
    const sum = (of: (section: (typeof sections)[number]) => number) => sections.reduce((all, one) => all + of(one), 0);
    const usedM = sum((one) => one.usedM);
    return {
      counts,
      usedM,
      drawnM: sum((one) => one.drawnM),
      moreM: sum((one) => one.moreM),
      ...(reelLengthM === undefined ? {} : { remainderM: reelLengthM - usedM }),
      sections: sections.map((one) => ({ ...one })),
      doubted: doubted.map((one) => ({ ...one })),
    };
  },
});

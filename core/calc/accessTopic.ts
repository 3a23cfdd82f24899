import { z } from "zod";
import { accessDocument, accessTimeline, orderSize } from "../jointpole/accessTimeline.ts";
import { positive } from "./fields.ts";
import { defineTopic } from "./topic.ts";

const day = (meaning: string) => z.iso.date().describe(`${meaning}, as 2026-03-02`);

export const accessTopic = defineTopic({
  id: "access",
  title: "Last days of a US application for poles: complete, answered, estimated, made ready",
  request: z.strictObject({
    receivedIso: day("when the pole owner received the application"),
    resubmittedIso: day("when it was sent in again after it was found incomplete").optional(),
    poleCount: positive("poles asked for").int(),
    ownerPoleCount: positive("poles the owner has in the state").int(),
  }),
  reply: z.strictObject({
    document: z.string(),
    order: z.enum(["simple", "larger", "beyond"]).describe("beyond: more poles than the times are for"),
    steps: z.array(
      z.strictObject({
        step: z.string(),
        days: z.number().describe("days from the step before"),
        counted: z.enum(["business", "calendar"]).describe("business: Monday to Friday; holidays are not known here"),
        byIso: z.string().describe("the last day, were every step before to take all its time"),
        clause: z.string(),
        mark: z.enum(["seen", "memory"]).describe("memory: not read again, unverified"),
      }),
    ),
  }),
  example: { receivedIso: "2026-03-02", poleCount: 48, ownerPoleCount: 120000 },
  answer({ poleCount, ownerPoleCount, ...dates }) {
    const { order, steps } = accessTimeline(dates, orderSize(poleCount, ownerPoleCount));
    return { document: accessDocument, order, steps: [...steps] };
  },
});

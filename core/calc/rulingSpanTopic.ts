import { z } from "zod";
import { rulingSpanM } from "../strand/rulingSpan.ts";
import { figure, positive } from "./fields.ts";
import { defineTopic } from "./topic.ts";

export const rulingSpanTopic = defineTopic({
  id: "ruling-span",
  title: "The span that changes its tension as a whole row does, where the strand slips at the poles between",
  request: z.strictObject({
    spansM: z.array(positive("m")).min(1).describe("spans from dead end to dead end, m"),
  }),
  reply: z.strictObject({ rulingSpanM: figure("m") }),
  example: { spansM: [100, 150, 200] },
  answer: ({ spansM }) => ({ rulingSpanM: rulingSpanM(spansM) }),
});

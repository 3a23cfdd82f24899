import { z } from "zod";
import { sagByReturnWaveM } from "../strand/returnWave.ts";
import { figure, positive } from "./fields.ts";
import { defineTopic } from "./topic.ts";

export const returnWaveTopic = defineTopic({
  id: "return-wave",
  title: "Sag of a span by stopwatch, from the returns of a wave on the strand",
  request: z.strictObject({
    timeS: positive("from the blow on the strand until the wave has come back so many times, s"),
    returnCount: z.int().min(1).describe("how many times it came back"),
  }),
  reply: z.strictObject({ sagM: figure("vertical distance at midspan below the chord, m") }),
  example: { timeS: 12, returnCount: 10 },
  answer: ({ timeS, returnCount }) => ({ sagM: sagByReturnWaveM(timeS, returnCount) }),
});

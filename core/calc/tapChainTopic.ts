import { z } from "zod";
import { idealSplitLossDb, splitLossLimitDb } from "../fiber/splitterLoss.ts";
import { bestTapChain, tapChain } from "../fiber/tapChain.ts";
import { figure, notNegative } from "./fields.ts";
import { defineTopic } from "./topic.ts";

const share = z.number().gt(0).lt(1);

export const tapChainTopic = defineTopic({
  id: "tap-chain",
  title: "Unequal taps one behind the other, beside one splitter for all",
  request: z.strictObject({
    betweenDb: z
      .array(notNegative("loss ahead of a terminal from the one before it, fiber and splices, dB"))
      .min(2)
      .describe("one a terminal, the first from the start of the chain"),
    offeredFrac: z.array(share).min(1).describe("shares of light a tap can be had with, at its terminal's leg"),
    sharesFrac: z
      .array(share)
      .describe("taps decided already, one fewer than terminals; left out, the chain whose worst terminal loses least")
      .optional(),
    excessDb: notNegative("what a tap itself loses, dB; 0.2 to 0.5 is common"),
  }),
  reply: z.strictObject({
    sharesFrac: z.array(share).describe("share each tap gives its terminal; the last terminal gets all that arrives"),
    lossesDb: z.array(figure("from the start of the chain to the terminal's input, dB")),
    worstDb: figure("largest of them, dB"),
    oneSplitterDb: figure("largest loss of one uniform splitter for as many terminals by 0.8 + 3.4 log2 N, dB"),
    idealDb: figure("an even split for as many terminals at best, 10 log10 N, dB"),
  }),
  example: { betweenDb: [0.1, 0.1, 0.1, 0.1], offeredFrac: [0.1, 0.2, 0.3, 0.4, 0.5], excessDb: 0.3 },
  answer({ betweenDb, offeredFrac, sharesFrac, excessDb }) {
    const chain =
      sharesFrac === undefined
        ? bestTapChain(offeredFrac, excessDb, betweenDb)
        : tapChain(sharesFrac, excessDb, betweenDb);
    return {
      sharesFrac: [...chain.sharesFrac],
      lossesDb: [...chain.lossesDb],
      worstDb: Math.max(...chain.lossesDb),
      oneSplitterDb: splitLossLimitDb(betweenDb.length),
      idealDb: idealSplitLossDb(betweenDb.length),
    };
  },
});

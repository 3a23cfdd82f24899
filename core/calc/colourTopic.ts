import { z } from "zod";
import { fiberPlace } from "../fiber/colourCode.ts";
import { defineTopic } from "./topic.ts";

const countFromOne = z.int().min(1);

export const colourTopic = defineTopic({
  id: "colour",
  title: "Tube and colours of a fiber by its number",
  request: z.strictObject({
    fiber: countFromOne.describe("number of the fiber in its cable, from 1"),
    fibersPerTube: countFromOne.describe("fibers in each tube"),
  }),
  reply: z.strictObject({
    tube: countFromOne.describe("number of the tube, from 1"),
    tubeColour: z.string().describe("colour of the tube in words, with its tracer"),
    fiberInTube: countFromOne.describe("number of the fiber in its tube, from 1"),
    fiberColour: z.string().describe("colour of the fiber in words, with its tracer"),
  }),
  example: { fiber: 145, fibersPerTube: 12 },
  answer: ({ fiber, fibersPerTube }) => fiberPlace(fiber, fibersPerTube),
});

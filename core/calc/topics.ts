import { z } from "zod";
import { accessTopic } from "./accessTopic.ts";
import type { Answer } from "./answer.ts";
import { assignTopic } from "./assignTopic.ts";
import { attachmentRangeTopic } from "./attachmentRangeTopic.ts";
import { breakPlaceTopic } from "./breakPlaceTopic.ts";
import { clampedSpansTopic } from "./clampedSpansTopic.ts";
import { colourTopic } from "./colourTopic.ts";
import { distanceTopic } from "./distanceTopic.ts";
import { expectedReadingTopic } from "./expectedReadingTopic.ts";
import { fibersTopic } from "./fibersTopic.ts";
import { footageTopic } from "./footageTopic.ts";
import { guyTopic } from "./guyTopic.ts";
import { lashingTopic } from "./lashingTopic.ts";
import { layoutTopic } from "./layoutTopic.ts";
import { loadTopic } from "./loadTopic.ts";
import { lossPortTopic } from "./lossPortTopic.ts";
import { lossTopic } from "./lossTopic.ts";
import { lowPointTopic } from "./lowPointTopic.ts";
import { profileTopic } from "./profileTopic.ts";
import { returnWaveTopic } from "./returnWaveTopic.ts";
import { rulingSpanTopic } from "./rulingSpanTopic.ts";
import { sagTopic } from "./sagTopic.ts";
import { separationTopic } from "./separationTopic.ts";
import { stringingTopic } from "./stringingTopic.ts";
import { tapChainTopic } from "./tapChainTopic.ts";
import { tensionChangeTopic } from "./tensionChangeTopic.ts";
import type { CalcAround, Topic } from "./topic.ts";
import { traceMatchTopic } from "./traceMatchTopic.ts";
import { traceTopic } from "./traceTopic.ts";
import { windTopic } from "./windTopic.ts";

/** The register: every topic there is, by id. */
export const topics: readonly Topic[] = [
  accessTopic,
  assignTopic,
  attachmentRangeTopic,
  breakPlaceTopic,
  clampedSpansTopic,
  colourTopic,
  distanceTopic,
  expectedReadingTopic,
  fibersTopic,
  footageTopic,
  guyTopic,
  layoutTopic,
  lashingTopic,
  loadTopic,
  lossPortTopic,
  lossTopic,
  lowPointTopic,
  profileTopic,
  returnWaveTopic,
  rulingSpanTopic,
  sagTopic,
  separationTopic,
  stringingTopic,
  tapChainTopic,
  tensionChangeTopic,
  traceTopic,
  traceMatchTopic,
  windTopic,
];

/** A topic as it is listed: JSON Schemas of request and reply, and a request to start from. */
type TopicDescription = {
  readonly id: string;
  readonly title: string;
  readonly request: unknown;
  readonly reply: unknown;
  readonly example: unknown;
};

/**
 * Runs one topic on a request from outside.
 *
 * @param topicId id in the register
 * @param input   what was read; checked here
 * @param around  what the request may name, and the clock that ends a search at its time limit
 * @returns the reply, or a fault with code unknown-topic, missing-field, unknown-field, bad-field or out-of-range
 */
export function runTopic(topicId: string, input: unknown, around?: CalcAround): Answer<unknown> {
  const topic = topics.find(({ id }) => id === topicId);
  if (topic !== undefined) return topic.run(input, around);
  return {
    ok: false,
    fault: {
      code: "unknown-topic",
      what: `There is no topic called "${topicId}".`,
      where: "topic",
      mend: `Use one of ${topics.map(({ id }) => id).join(", ")}.`,
    },
  };
}

/** Lists every topic with the JSON Schema of its request and reply. */
export function describeTopics(): readonly TopicDescription[] {
  return topics.map(({ id, title, request, reply, example }) => ({
    id,
    title,
    request: z.toJSONSchema(request, { io: "input" }),
    reply: z.toJSONSchema(reply, { io: "input" }),
    example,
  }));
}

import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { describeTopics, runTopic, topics } from "../../../core/calc/topics.ts";

const topicFiles = readdirSync(new URL("../../../core/calc", import.meta.url)).filter((name) =>
  name.endsWith("Topic.ts"),
);

/** The id of the topic whose file has this name: lowPointTopic.ts is low-point. */
function idOf(file: string): string {
  return file.replace(/Topic\.ts$/, "").replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

describe("the register of topics", () => {
  it("holds each topic file of the folder, by the id in its name, and no other", () => {
    expect(topicFiles.length).toBeGreaterThan(0);
    expect(topics.map(({ id }) => id).sort()).toEqual(topicFiles.map(idOf).sort());
  });

  it("has no id twice", () => {
    expect(new Set(topics.map(({ id }) => id)).size).toBe(topics.length);
  });

  it.each(topics.map((topic) => [topic.id, topic] as const))(
    "%s answers its example in the shape it promises",
    (id, topic) => {
      const answer = runTopic(id, topic.example);
      if (!answer.ok) throw new Error(answer.fault.what);
      expect(topic.reply.parse(answer.value)).toEqual(answer.value);
    },
  );

  it.each(topics.map(({ id }) => id))("%s refuses an empty request and a field it does not know", (id) => {
    expect(runTopic(id, {})).toMatchObject({ ok: false, fault: { code: "missing-field" } });
    const example = topics.find((topic) => topic.id === id)?.example;
    expect(runTopic(id, { ...Object(example), colourOfTruck: "red" })).toMatchObject({
      ok: false,
      fault: { code: "unknown-field", what: "The request has no field called colourOfTruck." },
    });
  });

  it("names the topics there are when asked for one there is not", () => {
    expect(runTopic("sagg", {})).toEqual({
      ok: false,
      fault: {
        code: "unknown-topic",
        what: 'There is no topic called "sagg".',
        where: "topic",
        mend: expect.stringMatching(
          /^Use one of access, assign, attachment-range, break-place, clamped-spans, colour, distance, .*, tension-change, trace, trace-match, wind\.$/,
        ),
      },
    });
  });

  it("lists request and reply of each topic as JSON Schema", () => {
    const fields = describeTopics().map(({ id, request, reply }) => [
      id,
      Object(request).required,
      Object(reply).required,
    ]);
    expect(fields).toHaveLength(topics.length);
    expect(fields).toEqual(
      expect.arrayContaining([
        ["colour", ["fiber", "fibersPerTube"], ["tube", "tubeColour", "fiberInTube", "fiberColour"]],
        ["distance", ["from", "to"], ["distanceM"]],
        [
          "load",
          ["diameterM", "weightNPerM"],
          ["iceNPerM", "verticalNPerM", "windNPerM", "resultantNPerM", "totalNPerM", "swingRad"],
        ],
        ["loss", ["segments", "events"], ["lossDb"]],
        ["sag", ["spanM", "weightNPerM", "horizontalN", "method"], ["sagM", "lengthM", "lowPointM", "supportTensionN"]],
        [
          "tension-change",
          ["spanM", "areaM2", "modulusPa", "expansionPerC", "from", "to"],
          ["horizontalN", "sagM", "supportTensionN"],
        ],
        ["ruling-span", ["spansM"], ["rulingSpanM"]],
        ["low-point", ["spanM", "riseM", "weightNPerM", "horizontalN", "method"], ["lowPointM", "belowLowerM"]],
      ]),
    );
  });
});

import { describe, expect, it } from "vitest";
import { runTopic } from "../../../core/calc/topics.ts";

function faultOf(topicId: string, input: unknown) {
  const answer = runTopic(topicId, input);
  if (answer.ok) throw new Error("the request was answered");
  return answer.fault;
}

const span = { spanM: 45, weightNPerM: 3, horizontalN: 1700, method: "catenary" };

describe("what is wrong with a request, in plain words", () => {
  it("a request that is not an object", () => {
    expect(faultOf("sag", null)).toEqual({
      code: "bad-field",
      what: "The request is null.",
      where: "sag",
      mend: "Give one JSON object.",
    });
    expect(faultOf("sag", [1])).toMatchObject({ what: "The request is a list." });
  });

  it("a field that is missing, names among them", () => {
    expect(faultOf("sag", { ...span, spanM: undefined })).toEqual({
      code: "missing-field",
      what: "spanM is missing.",
      where: "sag.spanM",
      mend: "Give a number.",
    });
    expect(faultOf("sag", { ...span, method: undefined })).toMatchObject({
      code: "missing-field",
      what: "method is missing.",
    });
  });

  it("a field of the wrong kind", () => {
    expect(faultOf("sag", { ...span, spanM: "148 ft" })).toMatchObject({
      code: "bad-field",
      what: 'spanM is the text "148 ft".',
    });
    expect(faultOf("sag", { ...span, spanM: Number.POSITIVE_INFINITY })).toMatchObject({ what: "spanM is Infinity." });
    expect(faultOf("colour", { fiber: 1.5, fibersPerTube: 12 })).toMatchObject({ mend: "Give a whole number." });
    expect(faultOf("sag", { ...span, method: "rope" })).toEqual({
      code: "bad-field",
      what: 'method is the text "rope".',
      where: "sag.method",
      mend: 'Give "catenary" or "parabola".',
    });
  });

  it("a figure out of its range, down to its place in a list", () => {
    expect(faultOf("loss", { segments: [{ lengthM: -1, dbPerKm: 0.35 }], events: [] })).toEqual({
      code: "out-of-range",
      what: "segments[0].lengthM must be at least 0. It is -1.",
      where: "loss.segments[0].lengthM",
      mend: "Give a number that is at least 0.",
    });
    expect(faultOf("sag", { ...span, spanM: 0 })).toMatchObject({ what: "spanM must be more than 0. It is 0." });
    expect(faultOf("distance", { from: [0, 91], to: [0, 0] })).toMatchObject({
      code: "out-of-range",
      where: "distance.from[1]",
    });
    expect(faultOf("distance", { from: [0, 0], to: [-181, 0] })).toMatchObject({
      code: "out-of-range",
      where: "distance.to[0]",
    });
  });

  it("a place of one or three numbers", () => {
    expect(faultOf("distance", { from: [0], to: [0, 0] })).toMatchObject({
      what: "The number of items in from must be at least 2.",
    });
    expect(faultOf("distance", { from: [0, 1, 2], to: [0, 0] })).toMatchObject({ mend: "Give at most 2 items." });
  });

  it("figures that are each in range and do not fit together", () => {
    expect(faultOf("sag", { ...span, horizontalN: 1e-9 })).toMatchObject({ code: "out-of-range", where: "sag" });
    expect(faultOf("colour", { fiber: 99999, fibersPerTube: 12 })).toMatchObject({
      code: "out-of-range",
      where: "colour",
    });
  });
});

import { expect, it } from "vitest";
import { z } from "zod";
import { defineTopic } from "../../../core/calc/topic.ts";

function topicThatThrows(error: Error) {
  return defineTopic({
    id: "half",
    title: "Half of a number",
    request: z.strictObject({ whole: z.number() }),
    reply: z.strictObject({ half: z.number() }),
    example: { whole: 2 },
    answer: () => {
      throw error;
    },
  });
}

it("a kernel that refuses its figures makes a fault of the request", () => {
  expect(topicThatThrows(new RangeError("whole must be even")).run({ whole: 3 })).toEqual({
    ok: false,
    fault: {
      code: "out-of-range",
      what: "whole must be even.",
      where: "half",
      mend: "Change the figures so that they fit together.",
    },
  });
});

it("an error of the program itself is thrown, not dressed up as a fault of the request", () => {
  expect(() => topicThatThrows(new TypeError("no such kernel")).run({ whole: 3 })).toThrow(TypeError);
});

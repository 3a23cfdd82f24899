import { parseArgs } from "node:util";
import { expect, test } from "vitest";
import { isMisread, misreadWords } from "../../../electron/host/misread.ts";

function thrownBy(work: () => unknown): unknown {
  try {
    return work();
  } catch (error) {
    return error;
  }
}

test("an option nobody knows is told in one sentence", () => {
  const error = thrownBy(() => parseArgs({ args: ["--loud"], options: {}, allowPositionals: true }));
  expect(isMisread(error) && misreadWords(error)).toBe("Unknown option '--loud'.");
});

test("a mistake of the program is no slip of the person who typed", () => {
  expect(isMisread(new TypeError("x is not a function"))).toBe(false);
});

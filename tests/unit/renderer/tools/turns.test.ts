import { expect, test } from "vitest";
import { openTurns } from "../../../../renderer/tools/adding/turns.ts";

test("what is asked for while something is under way comes after it, in the order it was asked for", async () => {
  const turns = openTurns();
  const done: string[] = [];
  let answer = (): void => {};
  turns.take(() => new Promise<void>((resolve) => (answer = resolve)).then(() => void done.push("first click")));
  turns.take(() => void done.push("second click"));
  const last = new Promise<void>((resolve) => {
    turns.take(() => {
      done.push("Escape");
      resolve();
    });
  });
  await Promise.resolve();
  expect(done).toEqual([]);
  answer();
  await last;
  expect(done).toEqual(["first click", "second click", "Escape"]);
});

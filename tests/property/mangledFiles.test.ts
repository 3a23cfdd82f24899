import { describe, expect, test } from "vitest";
import { seededRandom } from "../fixtures/mangle.ts";
import { mangledKinds } from "../fixtures/mangledReaders.ts";

const countEach = 400;

describe("a file hurt on its way", () => {
  test.each(Object.keys(mangledKinds))(
    "%s is taken whole or refused by name, whatever happened to it",
    async (name) => {
      const kind = mangledKinds[name];
      if (!kind) throw new Error(`no kind ${name}`);
      const random = seededRandom(7);
      const outcomes = new Map<string, number>();
      for (let done = 0; done < countEach; done += 1) {
        const outcome = await kind.take(kind.next(random));
        outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
      }
      // were all refused or all taken, the hurts would try nothing
      expect(outcomes.get("taken") ?? 0).toBeGreaterThan(0);
      expect(outcomes.get("taken") ?? 0).toBeLessThan(countEach);
    },
    60_000,
  );
});

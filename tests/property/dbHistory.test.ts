import fc from "fast-check";
import { expect, test } from "vitest";
import { redo, redoable, undo, undoable } from "../../db/history.ts";
import { writeChange } from "../../db/writeChange.ts";
import { opening, withFile } from "../contract/db/scratch.ts";
import { raisePole, smallRoute } from "../contract/db/smallRoute.ts";

const steps = fc.array(fc.constantFrom("edit", "undo", "undo", "redo"), { maxLength: 25 });

test("what the journal says can be undone and redone is what two plain stacks say", () => {
  fc.assert(
    fc.property(steps, (asked) => {
      withFile(smallRoute(), ({ db }) => {
        const done: number[] = [];
        const taken: number[] = [];
        let number = 10;
        for (const step of asked) {
          if (step === "edit") {
            number += 1;
            expect(writeChange(db, { label: `${number}`, ...opening, rows: [raisePole(number)] }).ok).toBe(true);
            done.push(number);
            taken.length = 0;
          } else {
            const [from, to, carryOut] =
              step === "undo" ? ([done, taken, undo] as const) : ([taken, done, redo] as const);
            const moved = from.pop();
            if (moved !== undefined) to.push(moved);
            expect(carryOut(db, opening).ok).toBe(moved !== undefined);
          }
          expect(undoable(db, 99).map(({ label }) => Number(label))).toEqual(done.toReversed());
          expect(redoable(db, 99).map(({ label }) => Number(label))).toEqual(taken.toReversed());
        }
      });
    }),
    { numRuns: 25 },
  );
});

import fc from "fast-check";
import { expect, test } from "vitest";
import { applyChange } from "../../core/edits/change.ts";
import { redo, redoable, undo, undoable } from "../../db/history.ts";
import { writeChange } from "../../db/writeChange.ts";
import { granted, opening, routeIn, withFile } from "../contract/db/scratch.ts";
import { anyRoute, difference } from "./dbRoutes.ts";

/** Signatures come into a file by its journal alone. */
const anyStart = anyRoute.map((route): typeof route => ({ ...route, signOff: new Map() }));

test("a route of any values comes back from its file as it went in", () => {
  fc.assert(
    fc.property(anyStart, (route) => {
      withFile(route, (file) => expect(routeIn(file)).toEqual(route));
    }),
    { numRuns: 25 },
  );
});

test("undoing every edit puts every row of every table back, making them again brings the last state", () => {
  fc.assert(
    fc.property(anyStart, fc.array(anyRoute, { minLength: 1, maxLength: 4 }), fc.nat(), (first, states, seed) => {
      withFile(first, (file) => {
        let present = first;
        for (const next of states) {
          const change = { label: "Edit", ...opening, rows: shuffled(difference(present, next), seed) };
          granted(writeChange(file.db, change));
          present = granted(applyChange(present, change));
          expect(routeIn(file)).toEqual(present);
        }
        const last = present;
        while (undoable(file.db, 1).length > 0)
          present = granted(applyChange(present, granted(undo(file.db, opening))));
        expect(routeIn(file)).toEqual(first);
        expect(present).toEqual(first);
        while (redoable(file.db, 1).length > 0) granted(redo(file.db, opening));
        expect(routeIn(file)).toEqual(last);
      });
    }),
    { numRuns: 20 },
  );
});

/** The same rows in another order. */
function shuffled<T>(rows: readonly T[], seed: number): T[] {
  const turn = rows.length === 0 ? 0 : seed % rows.length;
  const turned = [...rows.slice(turn), ...rows.slice(0, turn)];
  return seed % 2 === 0 ? turned : turned.reverse();
}

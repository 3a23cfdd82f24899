import fc from "fast-check";
import { expect, test } from "vitest";
import { applyChange, invert } from "../../core/edits/change.ts";
import { sumChanges } from "../../core/edits/sumChanges.ts";
import type { Route } from "../../core/model/route.ts";
import { redo, undo } from "../../db/history.ts";
import { editedSince, routeAtRevision } from "../../db/revisions.ts";
import { writeChange } from "../../db/writeChange.ts";
import { granted, opening, routeIn, withFile } from "../contract/db/scratch.ts";
import { revisionOf } from "../fixtures/route/revisionRow.ts";
import { anyRoute, difference } from "./dbRoutes.ts";

const change = (rows: ReturnType<typeof difference>) => ({ label: "Edit", ...opening, rows });
const unissued = anyRoute.map((route): Route => ({ ...route, revision: new Map() }));
/** A signature that stands in a file from its start, by no entry of its journal, would count as tampering. */
const unsigned = unissued.map((route): Route => ({ ...route, signOff: new Map() }));

test("the sum of edits applied to the old route is the new one; with their own undoing they come to nothing", () => {
  fc.assert(
    fc.property(unissued, fc.array(unissued, { minLength: 1, maxLength: 4 }), (first, states) => {
      let present = first;
      const edits = states.map((next) => {
        const rows = difference(present, next);
        present = next;
        return rows;
      });
      const sum = sumChanges(edits);
      expect(granted(applyChange(first, { rows: sum }))).toEqual(present);
      const back = edits.map((rows) => invert(change(rows)).rows).toReversed();
      expect(sumChanges([...edits, ...back])).toEqual([]);
    }),
    { numRuns: 25 },
  );
});

const steps = fc.array(
  fc.oneof(
    fc.constantFrom("undo", "undo", "redo", "issue"),
    unissued.map((route) => ({ becomes: route })),
  ),
  { minLength: 2, maxLength: 10 },
);

test("the route at a revision is what it was when that was issued, whatever was edited, undone and redone since", () => {
  fc.assert(
    fc.property(unsigned, steps, (first, asked) => {
      withFile(first, ({ db, ...file }) => {
        const whenIssued = new Map<string, Route>();
        let present = first;
        for (const step of [...asked, "issue"] as const) {
          if (step === "undo" || step === "redo") {
            (step === "undo" ? undo : redo)(db, opening);
          } else if (step === "issue") {
            const after = revisionOf(String(whenIssued.size), whenIssued.size + 1);
            granted(writeChange(db, change([{ table: "revision", id: after.id, before: null, after }])));
            whenIssued.set(after.id, routeIn({ db, ...file }));
          } else {
            granted(writeChange(db, change(difference(present, { ...step.becomes, revision: present.revision }))));
          }
          present = routeIn({ db, ...file });
        }
        for (const { id } of present.revision.values()) {
          const then = whenIssued.get(id);
          expect(sorted(granted(routeAtRevision(db, present, id)))).toEqual(then && sorted(then));
        }
        const [from, to] = [...present.revision.values()].sort((a, b) => a.number - b.number);
        const [before, after] = [from, to].map((one) => whenIssued.get(one?.id ?? ""));
        if (!(from && to && before && after)) return;
        const between = granted(editedSince(db, from.id, to.id));
        expect(sorted(granted(applyChange(before, { rows: between })))).toEqual(sorted(after));
      });
    }),
    { numRuns: 12 },
  );
});

/** Tables without the order of their rows, which no drawing leans on. */
function sorted(route: Route): object {
  return Object.fromEntries(Object.entries(route).map(([table, rows]) => [table, Object.fromEntries(rows)]));
}

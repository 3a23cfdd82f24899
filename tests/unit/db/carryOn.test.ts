import { expect, test } from "vitest";
import type { RowChange } from "../../../core/model/rowChange.ts";
import { carryOn } from "../../../db/carryOn.ts";
import { createRouteFile } from "../../../db/createRouteFile.ts";
import type { WriteDb } from "../../../db/driver.ts";
import { history, redo, redoable, undo, undoable } from "../../../db/history.ts";
import { openRouteFile } from "../../../db/openRouteFile.ts";
import { writeChange } from "../../../db/writeChange.ts";
import { granted, inScratch, opening, routeIn, withFile } from "../../contract/db/scratch.ts";
import { smallRoute } from "../../contract/db/smallRoute.ts";

const [firstPole] = smallRoute().pole.values();

function nudge(fromM: number, toM: number): RowChange {
  if (!firstPole) throw new Error("the small route has no pole");
  const id = firstPole.id;
  return {
    table: "pole",
    id,
    before: { ...firstPole, eastM: fromM },
    after: { ...firstPole, eastM: toM },
  };
}

/** Three nudges of a metre under one held key. */
function nudgeThrice(db: WriteDb): void {
  const startM = firstPole?.eastM ?? 0;
  const change = (stepCount: number) => ({
    label: "Nudge",
    ...opening,
    rows: [nudge(startM + stepCount, startM + stepCount + 1)],
  });
  granted(writeChange(db, change(0), { kind: "edit" }));
  granted(carryOn(db, change(1)));
  granted(carryOn(db, change(2)));
}

test("nudges under a held key stand in the journal as one, and one undo takes them all back", () => {
  withFile(smallRoute(), (file) => {
    nudgeThrice(file.db);
    const after = routeIn(file);
    expect(after.pole.get(firstPole?.id ?? "")?.eastM).toBe((firstPole?.eastM ?? 0) + 3);
    expect(history(file.db, 9)).toHaveLength(1);
    granted(undo(file.db, opening));
    expect(routeIn(file)).toEqual(smallRoute());
    granted(redo(file.db, opening));
    expect(routeIn(file)).toEqual(after);
  });
});

test("merged nudges survive closing the file", () => {
  inScratch((path) => {
    const first = granted(createRouteFile(path, smallRoute(), opening));
    nudgeThrice(first.db);
    first.close();
    const second = granted(openRouteFile(path, opening));
    granted(undo(second.db, opening));
    expect(routeIn(second)).toEqual(smallRoute());
    second.close();
  });
});

test("a nudge after an undo is a step of its own and clears what could be made again", () => {
  withFile(smallRoute(), (file) => {
    nudgeThrice(file.db);
    granted(undo(file.db, opening));
    const startM = firstPole?.eastM ?? 0;
    granted(carryOn(file.db, { label: "Nudge", ...opening, rows: [nudge(startM, startM - 1)] }));
    expect(history(file.db, 9).map((one) => one.kind)).toEqual(["edit", "undo", "edit"]);
    expect([undoable(file.db, 9).length, redoable(file.db, 9).length]).toEqual([1, 0]);
    granted(undo(file.db, opening));
    expect(routeIn(file)).toEqual(smallRoute());
  });
});

test("an edit of another name is never joined to the one before", () => {
  withFile(smallRoute(), (file) => {
    nudgeThrice(file.db);
    const startM = firstPole?.eastM ?? 0;
    granted(carryOn(file.db, { label: "Survey", ...opening, rows: [nudge(startM + 3, startM + 9)] }));
    expect(undoable(file.db, 9).map((one) => one.label)).toEqual(["Survey", "Nudge"]);
  });
});

test("a nudge made on a place that is no longer so is refused and changes nothing", () => {
  withFile(smallRoute(), (file) => {
    nudgeThrice(file.db);
    const before = routeIn(file);
    const startM = firstPole?.eastM ?? 0;
    const refused = carryOn(file.db, { label: "Nudge", ...opening, rows: [nudge(startM, startM + 1)] });
    expect(refused).toMatchObject({ ok: false, fault: { code: "conflict" } });
    expect(routeIn(file)).toEqual(before);
  });
});

import { expect, test } from "vitest";
import { createRouteFile } from "../../../db/createRouteFile.ts";
import type { WriteDb } from "../../../db/driver.ts";
import { history, redo, redoable, undo, undoable } from "../../../db/history.ts";
import { openRouteFile } from "../../../db/openRouteFile.ts";
import { writeChange } from "../../../db/writeChange.ts";
import { faultCode, granted, inScratch, opening, routeIn, withFile } from "../../contract/db/scratch.ts";
import { raisePole, smallRoute } from "../../contract/db/smallRoute.ts";

function raise(db: WriteDb, number: number): void {
  granted(writeChange(db, { label: `Raise ${number}`, ...opening, rows: [raisePole(number)] }));
}

function labels(steps: readonly { readonly label: string }[]): string {
  return steps.map(({ label }) => label.replace("Raise ", "")).join(" ");
}

test("undo takes edits back newest first, redo makes them again oldest first", () => {
  withFile(smallRoute(), ({ db }) => {
    for (const number of [3, 4, 5]) raise(db, number);
    expect(labels(undoable(db, 9))).toBe("5 4 3");
    granted(undo(db, opening));
    granted(undo(db, opening));
    expect([labels(undoable(db, 9)), labels(redoable(db, 9))]).toEqual(["3", "4 5"]);
    granted(redo(db, opening));
    expect([labels(undoable(db, 9)), labels(redoable(db, 9))]).toEqual(["4 3", "5"]);
  });
});

test("a new edit clears what could be made again, and the journal keeps it all", () => {
  withFile(smallRoute(), ({ db }) => {
    for (const number of [3, 4]) raise(db, number);
    granted(undo(db, opening));
    raise(db, 6);
    expect([labels(undoable(db, 9)), labels(redoable(db, 9))]).toEqual(["6 3", ""]);
    granted(undo(db, opening));
    granted(undo(db, opening));
    expect([labels(undoable(db, 9)), labels(redoable(db, 9))]).toEqual(["", "3 6"]);
    expect(history(db, 9).map(({ kind, ofSeq }) => [kind, ofSeq])).toEqual([
      ["undo", 1],
      ["undo", 4],
      ["edit", null],
      ["undo", 2],
      ["edit", null],
      ["edit", null],
    ]);
    expect(history(db, 2).length).toBe(2);
  });
});

test("undo and redo survive closing the file", () => {
  inScratch((path) => {
    const first = granted(createRouteFile(path, smallRoute(), opening));
    for (const number of [3, 4]) raise(first.db, number);
    granted(undo(first.db, opening));
    first.close();
    const second = granted(openRouteFile(path, opening));
    expect([labels(undoable(second.db, 9)), labels(redoable(second.db, 9))]).toEqual(["3", "4"]);
    granted(redo(second.db, opening));
    granted(undo(second.db, opening));
    granted(undo(second.db, { author: "Office", atIso: "2026-03-05T00:00:00Z" }));
    expect(routeIn(second)).toEqual(smallRoute());
    expect(history(second.db, 1)[0]).toMatchObject({ author: "Office", atIso: "2026-03-05T00:00:00Z", kind: "undo" });
    second.close();
  });
});

test("with nothing to take back or make again, that is said", () => {
  withFile(smallRoute(), ({ db }) => {
    expect([faultCode(undo(db, opening)), faultCode(redo(db, opening))]).toEqual([
      "nothing-to-undo",
      "nothing-to-redo",
    ]);
  });
});

test("a journal whose rows were altered by other means is not undone", () => {
  withFile(smallRoute(), ({ db }) => {
    raise(db, 3);
    db.run('UPDATE journal SET rows_json = replace(rows_json, \'"eastM":120\', \'"eastM":"far"\')');
    expect(faultCode(undo(db, opening))).toBe("bad-row");
    db.run("UPDATE journal SET rows_json = '{}'");
    expect(faultCode(undo(db, opening))).toBe("damaged");
  });
});

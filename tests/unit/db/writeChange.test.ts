import { expect, test } from "vitest";
import type { Change } from "../../../core/edits/change.ts";
import type { RowChange } from "../../../core/model/rowChange.ts";
import { history } from "../../../db/history.ts";
import { writeChange } from "../../../db/writeChange.ts";
import { granted, routeIn, withFile } from "../../contract/db/scratch.ts";
import { poleNumbered, raisePole, smallRoute, spanAfter } from "../../contract/db/smallRoute.ts";

function edit(label: string, ...rows: RowChange[]): Change {
  return { label, author: "R. Field", atIso: "2026-03-04T05:10:00Z", rows };
}

test("an edit and its line in the journal are written together", () => {
  withFile(smallRoute(), (file) => {
    granted(writeChange(file.db, edit("Raise pole", raisePole(3))));
    expect(routeIn(file).pole.get("pole-3")).toEqual(poleNumbered(3));
    expect(history(file.db, 5)).toEqual([
      { seq: 1, label: "Raise pole", author: "R. Field", atIso: "2026-03-04T05:10:00Z", kind: "edit", ofSeq: null },
    ]);
  });
});

test("rows may come in any order: a span before its poles", () => {
  withFile(smallRoute(), (file) => {
    const span: RowChange = { table: "span", id: "span-3", before: null, after: spanAfter(3) };
    granted(writeChange(file.db, edit("Draw span", span, raisePole(4), raisePole(3))));
    expect(routeIn(file).span.get("span-3")).toEqual(spanAfter(3));
  });
});

test.each<[string, string, string, RowChange]>([
  ["a row that is already there", "conflict", "pole pole-1", raisePole(1)],
  [
    "a row that was changed meanwhile",
    "conflict",
    "pole pole-1",
    { table: "pole", id: "pole-1", before: { ...poleNumbered(1), note: "old" }, after: poleNumbered(1) },
  ],
  [
    "a height below ground",
    "bad-row",
    "pole pole-1, aboveGroundM",
    { table: "pole", id: "pole-1", before: poleNumbered(1), after: { ...poleNumbered(1), aboveGroundM: -1 } },
  ],
  ["a row under a name of another", "bad-row", "pole pole-9", { ...raisePole(3), id: "pole-9" } as RowChange],
  [
    "a tag the file cannot keep",
    "bad-row",
    "pole pole-3",
    { table: "pole", id: "pole-3", before: null, after: { ...poleNumbered(3), tag: "\0" } },
  ],
])("%s is refused and nothing is written", (_, code, where, row) => {
  withFile(smallRoute(), (file) => {
    expect(writeChange(file.db, edit("Try", raisePole(7), row))).toMatchObject({ fault: { code, where } });
    expect(routeIn(file)).toEqual(smallRoute());
    expect(history(file.db, 5)).toEqual([]);
  });
});

test("a pole cannot go while a span hangs on it; the fault names the span", () => {
  withFile(smallRoute(), (file) => {
    const refused = writeChange(
      file.db,
      edit("Take pole away", { table: "pole", id: "pole-2", before: poleNumbered(2), after: null }),
    );
    expect(refused).toMatchObject({
      fault: {
        code: "broken-reference",
        what: "The span span-1 names the pole pole-2, which is not there.",
        where: "span span-1, to_pole_id",
        mend: expect.stringContaining("delete what hangs on it first"),
      },
    });
    expect(routeIn(file)).toEqual(smallRoute());
  });
});

test("the settings cannot be taken away", () => {
  withFile(smallRoute(), (file) => {
    const before = smallRoute().settings.get("settings") ?? null;
    const refused = writeChange(file.db, edit("Wipe", { table: "settings", id: "settings", before, after: null }));
    expect(refused).toMatchObject({ fault: { code: "bad-row", where: "settings settings" } });
  });
});

test("an edit without rows leaves no line in the journal", () => {
  withFile(smallRoute(), (file) => {
    granted(writeChange(file.db, edit("Nothing")));
    expect(history(file.db, 5)).toEqual([]);
  });
});

test("a tag with a space before it comes back as it was written", () => {
  withFile(smallRoute(), (file) => {
    const after = { ...poleNumbered(3), tag: " P3" };
    granted(writeChange(file.db, edit("Raise pole", { table: "pole", id: "pole-3", before: null, after })));
    expect(routeIn(file).pole.get("pole-3")).toEqual(after);
  });
});

import { expect, test } from "vitest";
import { subjectOf } from "../../../core/closeout/subject.ts";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

const { packetId: _, madeOn: __, ...older } = readingRow(subjectOf("terminal", "terminal-1"), "offset", 0.9);

test("a reading of version 22 stands as a person's word, and its packets ask for no further light", () => {
  withVersion(22, (db) => {
    db.exec(`INSERT INTO packet VALUES ('packet-1', 1, 'North', 'terminal-1', 'Ann', '2030')`);
    db.run(
      `INSERT INTO reading VALUES (?, 'terminal', 'terminal-1', 0, '', 'offset', 0, 0.9, '', ?, ?)`,
      older.id,
      older.by,
      older.atIso,
    );
    granted(climb(db, null, 22, opening.atIso));
    const { reading, packet, ...rest } = granted(loadRoute(db));
    expect([...reading.values()]).toEqual([{ ...older, packetId: null, madeOn: "" }]);
    expect([...packet.values()].map((one) => one.wavelengthsNm)).toEqual([""]);
    expect({ ...rest, reading: new Map(), packet: new Map() }).toEqual(olderRoute());
  });
});

test("a reading taken back in version 22 comes back by undo as a person's word", () => {
  withVersion(22, (db) => {
    enterEdit(db, { table: "reading", id: older.id, before: older, after: null });
    granted(climb(db, null, 22, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).reading.get(older.id)).toEqual({ ...older, packetId: null, madeOn: "" });
  });
});

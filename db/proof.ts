import { createHash } from "node:crypto";
import type { Fault } from "../core/model/result.ts";
import { brokenChain, lookMend } from "./brokenChain.ts";
import type { ReadDb } from "./driver.ts";
import { brokenSignature, takeBack } from "./signedRows.ts";

/** The first thing in a file that was not written by this program, as far as its journal and signatures tell; null where all fits. */
export function brokenProof(db: ReadDb): Fault | null {
  return brokenChain(db) ?? brokenSignature(db, takeBack(db));
}

/** As `brokenProof`, every row the journal ever touched and every kept file among it; reads all of the file. */
export function brokenThroughout(db: ReadDb): Fault | null {
  return brokenChain(db) ?? brokenSignature(db, takeBack(db, true)) ?? brokenKeptFile(db);
}

function brokenKeptFile(db: ReadDb): Fault | null {
  for (const { hash } of db.all("SELECT hash FROM kept_file ORDER BY hash")) {
    const bytes = db.bytes("SELECT bytes FROM kept_file WHERE hash = ?", hash ?? null);
    if (
      createHash("sha256")
        .update(bytes ?? "")
        .digest("hex") === hash
    )
      continue;
    const what = `The kept file ${hash} was changed: not by this program.`;
    return { code: "rows-changed", what, where: `kept file ${hash}`, mend: lookMend };
  }
  return null;
}

import type { Fault } from "../../core/model/result.ts";
import type { SignOff } from "../../core/model/tables.ts";
import { headHash } from "../../db/chain.ts";
import { brokenThroughout } from "../../db/proof.ts";
import type { Session } from "./session.ts";

/** What a file's journal and signatures prove of it. */
type Proof = {
  /** The first thing that was changed outside the program; null where all fits. */
  readonly broken: Fault | null;
  readonly entryCount: number;
  readonly newestHash: string;
  readonly signatures: readonly SignOff[];
};

/** Reads all of an open file and holds every row, signature and kept file against its journal. */
export function proofOf(session: Session): Proof {
  const { db } = session.file;
  return {
    broken: brokenThroughout(db),
    entryCount: Number(db.get("SELECT count(*) AS count FROM journal")?.count ?? 0),
    newestHash: headHash(db),
    signatures: [...session.route().signOff.values()].sort((a, b) => a.number - b.number),
  };
}

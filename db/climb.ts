import { ok, type Result } from "../core/model/result.ts";
import { backUp } from "./backup.ts";
import { chainAnew, hasChain, headHash } from "./chain.ts";
import type { WriteDb } from "./driver.ts";
import { type Migration, migrations } from "./migrations/migrations.ts";
import { brokenProof } from "./proof.ts";
import { takeBack } from "./signedRows.ts";
import { transact } from "./transact.ts";

/**
 * Brings a file up to the newest version, all steps or none. What the journal proved before is put on record, as the steps rewrite it; what
 * did not fit stays on record.
 *
 * @param path    where a dated copy is put beside, before the first step; null for a file just made
 * @param version the version the file has now, 0 for an empty one
 * @returns the version it has then
 */
export function climb(
  db: WriteDb,
  path: string | null,
  version: number,
  atIso: string,
  steps: readonly Migration[] = migrations,
): Result<number> {
  const ahead = steps.filter((step) => step.version > version);
  const last = ahead.at(-1);
  if (!last) return ok(version);
  if (path !== null) {
    const kept = backUp(db, path, atIso);
    if (!kept.ok) return kept;
  }
  return transact(db, () => {
    const former = hasChain(db) ? { formerHash: headHash(db), broken: brokenProof(db)?.what ?? "" } : unchained;
    for (const step of ahead) step.up(db);
    db.exec(`PRAGMA user_version = ${last.version}`);
    if (hasChain(db)) {
      const signed = former.broken === "" ? takeBack(db).digests : {};
      chainAnew(db, { version: last.version, atIso, ...former, signaturesJson: JSON.stringify(signed) });
    }
    return ok(last.version);
  });
}

const unchained = { formerHash: "", broken: "" };

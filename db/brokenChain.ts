import type { Fault } from "../core/model/result.ts";
import { type ChainedEntry, type ClimbRecord, climbHash, entriesOf, entryHash } from "./chain.ts";
import type { ReadDb } from "./driver.ts";

/** The first thing of a journal that is not as this program wrote it; null where every entry fits the one before it. Reads all of it. */
export function brokenChain(db: ReadDb): Fault | null {
  const climbs = climbsOf(db);
  let hash = "";
  for (const climb of climbs) {
    if (climb.hash !== climbHash(hash, climb))
      return changed(
        `The record of bringing the file to version ${climb.version} was changed`,
        `climb ${climb.version}`,
      );
    if (climb.broken !== "") return { ...changed("", `climb ${climb.version}`), what: climb.broken };
    hash = climb.hash;
  }
  if (climbs.length === 0) return changed("The record of the file's making is gone", "climb");
  let seq = 0;
  for (const entry of entriesOf(db)) {
    if (entry.seq !== seq + 1) return changed(`Entry ${seq + 1} of the journal is gone`, `journal ${seq + 1}`);
    if (entryHash(hash, entry) !== entry.hash)
      return changed(`Entry ${entry.seq} of the journal, ${told(entry)}, was changed`, `journal ${entry.seq}`);
    [seq, hash] = [entry.seq, entry.hash];
  }
  const head = db.get("SELECT seq, hash FROM journal_head");
  if (head?.seq === seq && head.hash === hash) return null;
  const newest = typeof head?.seq === "number" && head.seq > seq ? ` It was written up to entry ${head.seq}.` : "";
  const cut = changed(`The journal ends at entry ${seq}, which is not its newest`, `journal ${seq + 1}`);
  return { ...cut, what: cut.what + newest };
}

/** The records of climbs, oldest first. */
export function climbsOf(db: ReadDb): (ClimbRecord & { readonly hash: string })[] {
  const found = db.arrays(
    "SELECT version, at_iso, former_hash, broken, signatures_json, hash FROM journal_climb ORDER BY version",
  );
  return found.map(([version, ...texts]) => {
    const [atIso = "", formerHash = "", broken = "", signaturesJson = "", hash = ""] = texts.map(String);
    return { version: Number(version), atIso, formerHash, broken, signaturesJson, hash };
  });
}

function changed(what: string, where: string): Fault {
  return { code: "journal-broken", what: `${what}: not by this program.`, where, mend: lookMend };
}

function told({ label, author, atIso }: ChainedEntry): string {
  return `"${label}" by ${author} at ${atIso}`;
}

/** What to do about a file somebody changed by other means. */
export const lookMend =
  "Nothing is lost: the route can be looked at, drawn and copied, not edited. Restore a backup from before, or find out who changed it.";

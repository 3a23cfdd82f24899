import { createHash } from "node:crypto";
import type { ReadDb, SqlValue, WriteDb } from "./driver.ts";

/** A line of the journal as its hash is taken over it. */
export type ChainedEntry = {
  readonly seq: number;
  readonly label: string;
  readonly author: string;
  readonly atIso: string;
  readonly kind: string;
  readonly ofSeq: number | null;
  readonly rowsJson: string;
};

/** The newest entry as the head of the journal knows it; number 0 and the hash of the last climb where there is none. */
type Head = { readonly seq: number; readonly hash: string };

/** What is kept of a climb, from which the entries are chained anew. */
export type ClimbRecord = {
  readonly version: number;
  readonly atIso: string;
  /** Hash of the newest entry before it; empty where there was no chain yet. */
  readonly formerHash: string;
  /** What did not fit before it; empty where all did. */
  readonly broken: string;
  /** By id of a signature, the digest of the rows signed, as the climb left them. */
  readonly signaturesJson: string;
};

/** Whether a file's journal is chained: it is since version 19. */
export function hasChain(db: ReadDb): boolean {
  return db.get("SELECT 1 AS there FROM sqlite_schema WHERE name = 'journal_head'") !== undefined;
}

/** The hash of an entry, over the hash of the one before it and all it holds. */
export function entryHash(former: string, entry: ChainedEntry): string {
  const { seq, label, author, atIso, kind, ofSeq, rowsJson } = entry;
  return sha256([former, seq, label, author, atIso, kind, ofSeq], rowsJson);
}

/** The hash of a climb's record, over that of the climb before it. */
export function climbHash(former: string, record: ClimbRecord): string {
  const { version, atIso, formerHash, broken, signaturesJson } = record;
  return sha256([former, version, atIso, formerHash, broken], signaturesJson);
}

/** Throws where a file has lost its head: opening looks for that first. */
function headOf(db: ReadDb): Head {
  const found = db.get("SELECT seq, hash FROM journal_head");
  if (!found) throw new Error("the journal has lost its head");
  return { seq: Number(found.seq), hash: String(found.hash) };
}

/** Hash of the newest entry; empty where the head is lost. */
export function headHash(db: ReadDb): string {
  return String(db.get("SELECT hash FROM journal_head")?.hash ?? "");
}

/** Adds an entry behind the newest one. */
export function appendEntry(db: WriteDb, { label, author, atIso, kind, ofSeq, rowsJson }: Omit<ChainedEntry, "seq">) {
  const { seq: newest, hash: former } = headOf(db);
  const seq = newest + 1;
  const hash = entryHash(former, { seq, label, author, atIso, kind, ofSeq, rowsJson });
  db.run(
    "INSERT INTO journal (seq, label, author, at_iso, kind, of_seq, rows_json, hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
    seq,
    label,
    author,
    atIso,
    kind,
    ofSeq,
    rowsJson,
    hash,
  );
  db.run("UPDATE journal_head SET seq = ?, hash = ?", seq, hash);
}

/** Writes the newest entry anew. */
export function rewriteNewest(db: WriteDb, entry: ChainedEntry): void {
  const before = db.get("SELECT hash FROM journal WHERE seq = ?", entry.seq - 1);
  const hash = entryHash(before ? String(before.hash) : chainStart(db), entry);
  db.run(
    "UPDATE journal SET at_iso = ?, rows_json = ?, hash = ? WHERE seq = ?",
    entry.atIso,
    entry.rowsJson,
    hash,
    entry.seq,
  );
  db.run("UPDATE journal_head SET hash = ?", hash);
}

/** Puts a climb on record and chains every entry anew from it. */
export function chainAnew(db: WriteDb, record: ClimbRecord): void {
  const { version, atIso, formerHash, broken, signaturesJson } = record;
  let hash = climbHash(chainStart(db), record);
  db.run(
    "INSERT INTO journal_climb (version, at_iso, former_hash, broken, signatures_json, hash) VALUES (?, ?, ?, ?, ?, ?)",
    version,
    atIso,
    formerHash,
    broken,
    signaturesJson,
    hash,
  );
  let seq = 0;
  for (const entry of entriesOf(db)) {
    hash = entryHash(hash, entry);
    seq = entry.seq;
    db.run("UPDATE journal SET hash = ? WHERE seq = ?", hash, seq);
  }
  db.run("DELETE FROM journal_head");
  db.run("INSERT INTO journal_head (id, seq, hash) VALUES (1, ?, ?)", seq, hash);
}

/** What the first entry is chained to: the hash of the last climb; empty before the first. */
function chainStart(db: ReadDb): string {
  return String(db.get("SELECT hash FROM journal_climb ORDER BY version DESC LIMIT 1")?.hash ?? "");
}

/** The entries of the journal, oldest first, a thousand read at a time. */
export function* entriesOf(db: ReadDb): Generator<ChainedEntry & { readonly hash: string }> {
  const hash = hasChain(db) ? "hash" : "''";
  const sql = `SELECT seq, label, author, at_iso, kind, of_seq, rows_json, ${hash} FROM journal
    WHERE seq > ? ORDER BY seq LIMIT 1000`;
  let last: SqlValue = 0;
  for (;;) {
    const found: SqlValue[][] = db.arrays(sql, last);
    for (const [seq, label, author, atIso, kind, ofSeq, rowsJson, hash] of found)
      yield {
        seq: Number(seq),
        label: String(label),
        author: String(author),
        atIso: String(atIso),
        kind: String(kind),
        ofSeq: typeof ofSeq === "number" ? ofSeq : null,
        rowsJson: String(rowsJson),
        hash: String(hash),
      };
    const newest = found.at(-1)?.[0];
    if (typeof newest !== "number") return;
    last = newest;
  }
}

/** The long text goes in as it is: to write it as JSON once more took half the time. */
function sha256(fields: readonly (string | number | null)[], text: string): string {
  return createHash("sha256").update(JSON.stringify(fields)).update(text).digest("hex");
}

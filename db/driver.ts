import { join } from "node:path";
import Database from "better-sqlite3";
import { fail, ok, type Result } from "../core/model/result.ts";

/** What a column holds on its way in or out. */
export type SqlValue = string | number | null;
type SqlRow = Readonly<Record<string, SqlValue>>;

/** A route file that can only be read through: a statement that would write is thrown back. */
export type ReadDb = {
  /** Rows as arrays in the order of the statement's columns. */
  readonly arrays: (sql: string, ...bound: SqlValue[]) => SqlValue[][];
  readonly all: (sql: string, ...bound: SqlValue[]) => SqlRow[];
  readonly get: (sql: string, ...bound: SqlValue[]) => SqlRow | undefined;
  /** The bytes in the one column of the first row; null where there is none. */
  readonly bytes: (sql: string, ...bound: SqlValue[]) => Uint8Array | null;
};

/** A route file that can be written to. */
export type WriteDb = ReadDb & {
  readonly run: (sql: string, ...bound: (SqlValue | Uint8Array)[]) => void;
  /** Several statements, none with values. */
  readonly exec: (sql: string) => void;
};

/** An open handle and the way to let it go. */
export type Handle = { readonly db: WriteDb; readonly close: () => void };

type Runtime = { readonly electron?: string | undefined; readonly modules: string };

/**
 * Where the native part for this runtime lies: Electron has a copy of its own, so that neither breaks the other.
 *
 * @param nativeFolder folder that holds `electron-<abi>-<platform>-<arch>`
 * @returns null where the package's own copy serves (Node)
 */
export function nativeBindingPath(
  nativeFolder: string,
  runtime: Runtime,
  platform: string,
  arch: string,
): string | null {
  if (!runtime.electron) return null;
  return join(nativeFolder, `electron-${runtime.modules}-${platform}-${arch}`, "better_sqlite3.node");
}

/**
 * Opens a SQLite file; what stands in it is not looked at.
 *
 * @param nativeBinding path of the native part, null for the package's own
 */
export function openHandle(path: string, mustExist: boolean, nativeBinding: string | null): Result<Handle> {
  try {
    const options = { fileMustExist: mustExist, timeout: busyTimeoutMs };
    return ok(handleOn(new Database(path, nativeBinding === null ? options : { ...options, nativeBinding })));
  } catch (error) {
    if (!isBindingError(error)) throw error;
    const mend = nativeBinding
      ? "Delete that folder and run npm start again, which makes it anew."
      : "Run npm rebuild better-sqlite3 in the program's folder.";
    return fail(
      "bad-binding",
      "The part that reads route files does not load.",
      nativeBinding ?? "better-sqlite3",
      mend,
    );
  }
}

/** The code SQLite gave an error, "SQLITE_BUSY" say; null for any other error. */
export function sqliteCode(error: unknown): string | null {
  return error instanceof Database.SqliteError ? error.code : null;
}

/** How long a statement waits for another program's lock, ms. */
const busyTimeoutMs = 2000;

function handleOn(database: Database.Database): Handle {
  const prepared = new Map<string, Database.Statement<(SqlValue | Uint8Array)[]>>();
  const statement = (sql: string) => {
    const present = prepared.get(sql) ?? database.prepare<(SqlValue | Uint8Array)[]>(sql);
    prepared.set(sql, present);
    return present;
  };
  const reading = (sql: string) => {
    const found = statement(sql);
    if (!found.readonly) throw new Error(`a statement that writes was sent to be read: ${sql}`);
    return found;
  };
  const db: WriteDb = {
    arrays: (sql, ...bound) =>
      reading(sql)
        .raw(true)
        .all(...bound) as SqlValue[][], // raw rows are arrays; the typings say unknown
    all: (sql, ...bound) =>
      reading(sql)
        .raw(false)
        .all(...bound) as SqlRow[], // as above, keyed by column
    get: (sql, ...bound) =>
      reading(sql)
        .raw(false)
        .get(...bound) as SqlRow | undefined, // as above
    bytes: (sql, ...bound) => {
      const found: unknown = reading(sql)
        .raw(false)
        .get(...bound);
      const value: unknown = typeof found === "object" && found !== null ? Object.values(found)[0] : null;
      return value instanceof Uint8Array ? value : null;
    },
    run: (sql, ...bound) => {
      statement(sql).run(...bound);
    },
    exec: (sql) => {
      database.exec(sql);
    },
  };
  return { db, close: () => database.close() };
}

function isBindingError(error: unknown): boolean {
  if (!(error instanceof Error) || sqliteCode(error) !== null) return false;
  const code = "code" in error ? error.code : undefined;
  return code === "ERR_DLOPEN_FAILED" || code === "MODULE_NOT_FOUND" || error.message.includes("bindings file");
}

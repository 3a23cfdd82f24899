import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { z } from "zod";

/** A small value kept as JSON in the person's own configuration folder. */
export type Kept<T> = { readonly read: () => T; readonly write: (value: T) => void };

/**
 * Keeps a value in a file of its own. A file that is not there or cannot be read is the empty value: what is kept here is a
 * convenience and never holds up the work, so a folder that cannot be written to is passed over as well.
 */
export function keptJson<T>(path: string, schema: z.ZodType<T>, empty: T): Kept<T> {
  return {
    read() {
      try {
        return schema.parse(JSON.parse(readFileSync(path, "utf8")));
      } catch {
        return empty;
      }
    },
    write(value) {
      const unfinished = `${path}.${process.pid}.part`;
      try {
        mkdirSync(dirname(path), { recursive: true });
        writeFileSync(unfinished, JSON.stringify(value, null, 2));
        renameSync(unfinished, path);
      } catch {
        // said above: the work goes on without it
      }
    },
  };
}

/**
 * A value kept in a file of the configuration folder, or held while the program runs.
 *
 * @param configFolder  null holds it only
 */
export function keptOrHeld<T>(configFolder: string | null, fileName: string, schema: z.ZodType<T>, empty: T): Kept<T> {
  if (configFolder !== null) return keptJson(join(configFolder, fileName), schema, empty);
  let held = empty;
  return {
    read: () => held,
    write(value) {
      held = value;
    },
  };
}

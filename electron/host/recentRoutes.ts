import { existsSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { z } from "zod";
import type { Reply } from "../../core/contract/contract.ts";
import { entryIdOf } from "./folders.ts";
import { keptJson } from "./keptJson.ts";

const recentSchema = z.array(
  z.strictObject({ path: z.string(), routeName: z.string(), place: z.string(), openedAtIso: z.string() }),
);
type Recent = z.infer<typeof recentSchema>[number];

/** The route files a person had open, newest first. */
export type RecentRoutes = {
  readonly list: () => Reply<"files.start">["recent"];
  readonly note: (opened: Recent) => void;
  /** Paths of the listed files that are still there, newest first. */
  readonly paths: () => readonly string[];
  /** Path of a listed file, or null. */
  readonly pathOf: (recentId: string) => string | null;
};

const mostKept = 12;

/** The recent route files as kept in a configuration folder. */
export function openRecentRoutes(configFolder: string): RecentRoutes {
  const kept = keptJson<Recent[]>(join(configFolder, "recent.json"), recentSchema, []);
  return {
    list: () =>
      kept.read().map(({ path, routeName, place, openedAtIso }) => ({
        recentId: entryIdOf(path),
        fileName: basename(path),
        folder: dirname(path),
        routeName,
        place,
        openedAtIso,
        isMissing: !existsSync(path),
      })),
    note: (opened) => kept.write([opened, ...kept.read().filter((one) => one.path !== opened.path)].slice(0, mostKept)),
    paths: () =>
      kept
        .read()
        .map((one) => one.path)
        .filter((path) => existsSync(path)),
    pathOf: (recentId) => kept.read().find((one) => entryIdOf(one.path) === recentId)?.path ?? null,
  };
}

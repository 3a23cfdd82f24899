import { join } from "node:path";
import { z } from "zod";
import type { Reply, Request } from "../../core/contract/contract.ts";
import { type KeptColumns, openKeptColumns } from "./keptColumns.ts";
import { keptJson } from "./keptJson.ts";
import { openRecentRoutes } from "./recentRoutes.ts";
import type { Session } from "./session.ts";

/** What the program remembers on this machine, beside the routes themselves. */
type KeptHere = {
  readonly recent: () => Reply<"files.start">["recent"];
  /** Puts a route at the head of the recent ones. */
  readonly note: (session: Session) => void;
  /** Paths of the recent routes that are still there, newest first. */
  readonly recentPaths: () => readonly string[];
  readonly pathOf: (recentId: string) => string | null;
  readonly isGuideDue: () => boolean;
  readonly guideSeen: () => void;
  readonly columns: (list: Request<"files.columns">) => Record<string, string>;
  readonly keepColumns: KeptColumns["keep"];
};

/** @param configFolder  null remembers nothing */
export function openKept(configFolder: string | null): KeptHere {
  if (configFolder === null) {
    return {
      recent: () => [],
      note: () => {},
      recentPaths: () => [],
      pathOf: () => null,
      isGuideDue: () => false,
      guideSeen: () => {},
      columns: () => ({}),
      keepColumns: () => {},
    };
  }
  const recent = openRecentRoutes(configFolder);
  const columns = openKeptColumns(configFolder);
  const guide = keptJson(join(configFolder, "guide.json"), z.strictObject({ isSeen: z.boolean() }), { isSeen: false });
  return {
    recent: recent.list,
    note({ path, plant, stamp }) {
      const { routeName, place } = plant.settings();
      recent.note({ path, routeName, place, openedAtIso: stamp.nowIso() });
    },
    recentPaths: recent.paths,
    pathOf: recent.pathOf,
    isGuideDue: () => !guide.read().isSeen,
    guideSeen: () => guide.write({ isSeen: true }),
    columns: (list) => ({ ...columns.find(list) }),
    keepColumns: columns.keep,
  };
}

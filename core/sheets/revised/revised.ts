import type { RowChange } from "../../model/rowChange.ts";
import type { Plant } from "../../plant/plant.ts";

/** How the route being drawn stands to the revisions issued. */
export type Revised = {
  /** The issued revision the route is; null where none is issued, or the route was edited since. */
  readonly revisionId: string | null;
  /** What sets the route apart from the revision issued before; null where there is none before. */
  readonly since: { readonly letter: string; readonly before: Plant; readonly rows: readonly RowChange[] } | null;
  /** True for a route drawn as built: what it is told against is then the design, not a revision. */
  readonly isAsBuilt?: boolean;
};

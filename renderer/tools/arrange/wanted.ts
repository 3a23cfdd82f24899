import type { Step } from "../../../core/edits/runSteps.ts";
import type { TableName } from "../../../core/model/tables.ts";

/** Steps that arrange things, in words and as one edit; or why nothing can be done. */
export type Wanted =
  | {
      readonly isReady: true;
      /** What undo calls it. */
      readonly label: string;
      /** What comes out, as one says it before it is done. */
      readonly words: string;
      readonly steps: readonly Step[];
      /** The kind that is moved. */
      readonly table: TableName;
    }
  | { readonly isReady: false; readonly reason: string };

/** Where nothing can be done. */
export function notReady(reason: string): Wanted {
  return { isReady: false, reason };
}

import type { Reply } from "../../core/contract/contract.ts";
import { fail, ok, type Result } from "../../core/model/result.ts";
import type { Session } from "./session.ts";

type Listed = Reply<"draw.sheets">["sheets"][number];
type DrawnSheet = Listed & Pick<Reply<"draw.sheet">, "links"> & { readonly svg: Uint8Array<ArrayBuffer> };

/** Sheets drawn to be looked at, each an SVG in UTF-8. */
export type DrawnSheets = { readonly revision: string; readonly sheets: readonly DrawnSheet[] };

/** Sets kept of each route: one for each of two windows, or the one shown and the one drawn in its place. */
const mostKept = 2;

/** Keeps the sheets of a preview, so that a window asks for one when it is looked at: all at once they would hold host and window up. */
export function openDrawnSheets(): {
  readonly keep: (session: Session, drawnId: string, drawn: DrawnSheets) => Reply<"draw.sheets">;
  /** Faults: no-drawing where others have taken its place. */
  readonly read: (session: Session, drawnId: string, number: string) => Result<Reply<"draw.sheet">>;
} {
  const kept = new WeakMap<Session, readonly (readonly [string, DrawnSheets])[]>();
  return {
    keep(session, drawnId, drawn) {
      kept.set(
        session,
        [...(kept.get(session) ?? []).filter(([id]) => id !== drawnId), [drawnId, drawn] as const].slice(-mostKept),
      );
      return {
        drawnId,
        revision: drawn.revision,
        sheets: drawn.sheets.map(({ svg: _svg, links: _links, ...one }) => one),
      };
    },
    read(session, drawnId, number) {
      const drawn = kept.get(session)?.find(([id]) => id === drawnId)?.[1];
      const sheet = drawn?.sheets.find((one) => one.number === number);
      if (!sheet) return fail("no-drawing", "The sheets were drawn anew elsewhere.", number, "Draw them anew.");
      return ok({ svg: new TextDecoder().decode(sheet.svg), links: sheet.links });
    },
  };
}

import { ok, type Result } from "../../core/model/result.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { changeGroups } from "../../core/sheets/revised/changeLines.ts";
import { type DrawnState, drawnState, routeBefore } from "./drawnState.ts";
import type { Handlers } from "./serve.ts";
import type { Session } from "./session.ts";
import { nextFreeLetter } from "./spentLetters.ts";

type Parts = {
  readonly withRoute: <T>(
    routeId: string,
    work: (session: Session) => Result<T> | Promise<Result<T>>,
  ) => Promise<Result<T>>;
};

/** Answers about revisions. */
export function revisionHandlers({ withRoute }: Parts): Pick<Handlers, "revision.changes"> {
  return {
    "revision.changes": ({ routeId, revisionId }) =>
      withRoute(routeId, (session) => {
        const state = drawnState(session, revisionId ?? null);
        if (!state.ok) return state;
        return ok({
          revisionId: state.value.revisionId,
          sinceLetter: state.value.since?.letter ?? null,
          nextLetter: nextFreeLetter(session),
          groups: changesOf(state.value),
        });
      }),
  };
}

/** What was changed since the revision before, told under headings. */
export function changesOf({ route, since }: DrawnState) {
  if (!since) return [];
  return changeGroups({ before: openPlant(routeBefore(route, since.rows)), after: openPlant(route) }, since.rows);
}

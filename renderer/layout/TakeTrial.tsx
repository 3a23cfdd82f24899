import { poleRun } from "../../core/layout/poleRun.ts";
import { takeTrial } from "../app/jobs.ts";
import { splitRef } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useLookOnly } from "../app/useLookOnly.ts";
import { useSession, useView } from "../app/useSession.ts";
import { areEditsHeld } from "../app/viewStore.ts";
import type { Tried } from "./WhatIfPanel.tsx";
import { whatIfWords as words } from "./whatIfWords.ts";

type Props = { readonly open: OpenRoute; readonly tried: Tried; readonly onTaken: () => void };

/** Takes a trial whole, or along the poles that are chosen on the diagram. */
export function TakeTrial({ open, tried, onTaken }: Props) {
  const session = useSession();
  const lookOnly = useLookOnly();
  const isBusy = useView(areEditsHeld);
  const selection = useView((state) => state.selection);
  const { plant, route } = open;
  const chosen = selection
    .map(splitRef)
    .filter(({ table, id }) => table === "pole" && route.pole.has(id))
    .map(({ id }) => id);
  const run = poleRun(plant, chosen);
  const tag = (id: string | undefined) => (id === undefined ? "" : plant.rowOf("pole", id).tag);
  const isStale = tried.route !== route;
  const take = async (poleIds: readonly string[] | null): Promise<void> => {
    if (await takeTrial(session, tried.trialId, poleIds)) onTaken();
  };
  const isShut = isBusy || lookOnly !== null || isStale;
  return (
    <>
      {isStale && <p className="problem">{words.stale}</p>}
      <p className="quiet">{words.runHow}</p>
      <footer>
        <button
          type="button"
          className="fix"
          disabled={isShut}
          title={lookOnly ?? undefined}
          onClick={() => void take(null)}
        >
          {words.takeAll}
        </button>
        <button
          type="button"
          className="fix"
          disabled={isShut || run.length === 0}
          title={lookOnly ?? undefined}
          onClick={() => void take(chosen)}
        >
          {run.length === 0
            ? words.takeRunNone
            : words.takeRun(words.run(tag(chosen[0]), tag(chosen.at(-1)), run.length))}
        </button>
      </footer>
    </>
  );
}

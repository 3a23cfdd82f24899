import { type ReactNode, useEffect, useState } from "react";
import type { LayoutDifference } from "../../core/layout/layoutDifference.ts";
import { chooseAndShow } from "../app/look.ts";
import { type RefKey, refKey } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { showTrial } from "./shownTrial.ts";
import type { Tried } from "./WhatIfPanel.tsx";
import { whatIfWords as words } from "./whatIfWords.ts";

type Props = { readonly open: OpenRoute; readonly tried: Tried };

/** Switches the trial on and off on the diagram, and says what its signs mean and how many of each there are. */
export function TrialOnDiagram({ open, tried }: Props) {
  const session = useSession();
  const [isWanted, setWanted] = useState(false);
  const shown = useView((state) => state.trial);
  const { trialId, route } = tried;
  useEffect(() => {
    if (!isWanted) return undefined;
    let isHere = true;
    void showTrial(session, { trialId, route }, () => isHere);
    return () => {
      isHere = false;
      session.view.setState({ trial: null });
    };
  }, [isWanted, session, trialId, route]);
  const isShown = shown?.trialId === trialId && open.route === route;
  return (
    <>
      <label className="tick">
        <input type="checkbox" checked={isWanted} onChange={(event) => setWanted(event.target.checked)} />
        <span>{words.onDiagram}</span>
      </label>
      {isWanted && isShown && <TrialLegend difference={shown.difference} />}
    </>
  );
}

function TrialLegend({ difference }: { readonly difference: LayoutDifference }) {
  const session = useSession();
  const { hung, remodelled, gone, moved, lost } = difference;
  const units = (ids: readonly string[]): readonly RefKey[] => ids.map((id) => refKey("livingUnit", id));
  const spans = (rows: LayoutDifference["hung"]): readonly RefKey[] =>
    [...new Set(rows.map((one) => one.spanId))].map((id) => refKey("span", id));
  const lines = [
    { name: words.legend.hung, sign: ghost, count: hung.length, refs: spans(hung) },
    { name: words.legend.remodelled, sign: becoming, count: remodelled.length, refs: spans(remodelled) },
    {
      name: words.legend.gone,
      sign: struck,
      count: gone.length,
      refs: gone.map((one) => refKey("terminal", one.id)),
    },
    {
      name: words.legend.moved,
      sign: dashes,
      count: moved.length,
      refs: units(moved.map((one) => one.livingUnitId)),
    },
    { name: words.legend.lost, sign: struckHouse, count: lost.length, refs: units(lost) },
  ].filter((one) => one.count > 0);
  if (lines.length === 0) return <p className="quiet">{words.legend.none}</p>;
  return (
    <ul className="lines decided" aria-label={words.legend.title}>
      {lines.map(({ name, sign, count, refs }) => (
        <li key={name}>
          <Glyph>{sign}</Glyph>
          <span>{name}</span>
          <button
            type="button"
            className="fix"
            aria-label={words.legend.choose(name, count)}
            onClick={() => chooseAndShow(session, refs)}
          >
            {count}
          </button>
        </li>
      ))}
    </ul>
  );
}

function Glyph({ children }: { readonly children: ReactNode }) {
  return (
    <svg className="decided-glyph" viewBox="0 0 32 22" aria-hidden="true">
      {children}
    </svg>
  );
}

const ghost = <rect x="5" y="6" width="22" height="10" rx="3" className="is-trial" />;
const becoming = (
  <>
    <rect x="5" y="1.5" width="22" height="8" rx="2.5" className="is-trial" />
    <rect x="8" y="13" width="16" height="7" rx="2.5" />
  </>
);
const dashes = <path d="M2 16l28-10" className="is-trial" />;
const struck = (
  <>
    <rect x="5" y="6" width="22" height="10" rx="3" />
    <path d="M9 3l14 16M23 3l-14 16" />
  </>
);
const struckHouse = (
  <>
    <path d="M9 12l7-6 7 6v7h-14z" />
    <path d="M7 4l18 16M25 4l-18 16" />
  </>
);

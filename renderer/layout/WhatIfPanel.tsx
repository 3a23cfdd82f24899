import { useEffect, useRef, useState } from "react";
import type { Reply } from "../../core/contract/contract.ts";
import type { Variant } from "../../core/edits/variantSteps.ts";
import type { Route } from "../../core/model/route.ts";
import { compareLayouts } from "../../core/plant/layoutCompare.ts";
import { tryLayout } from "../app/jobs.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { TakeTrial } from "./TakeTrial.tsx";
import { TrialOnDiagram } from "./TrialOnDiagram.tsx";
import { VariantForm } from "./VariantForm.tsx";
import { whatIfWords as words } from "./whatIfWords.ts";

/** A trial and the route it was tried on. */
export type Tried = Reply<"layout.try"> & { readonly route: Route };

/** Other standards, prices and models: the layout they lead to beside the present one, to be taken whole, in part or not at all. */
export function WhatIfPanel({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const [variant, setVariant] = useState<Variant>({});
  const [tried, setTried] = useState<Tried | null>(null);
  const isWorking = useView((state) => state.job !== null);
  const isEmpty = variant.modelIds?.length === 0;
  const ask = async (): Promise<void> => {
    const { route } = open;
    const reply = await tryLayout(session, variant);
    if (reply) setTried({ ...reply, route });
  };
  return (
    <aside className="import what-if" aria-label={words.title}>
      <header>
        <h2>{words.title}</h2>
        <button type="button" className="fix" onClick={() => session.view.setState({ isWhatIfOpen: false })}>
          {words.close}
        </button>
      </header>
      <p className="quiet">{words.how}</p>
      <VariantForm open={open} variant={variant} onChange={setVariant} />
      {isEmpty && <p className="problem">{words.noModel}</p>}
      <div className="settings-acts">
        <button type="button" className="fix" disabled={isWorking || isEmpty} onClick={() => void ask()}>
          {words.tryIt}
        </button>
        <button
          type="button"
          className="fix"
          disabled={Object.keys(variant).length === 0}
          onClick={() => setVariant({})}
        >
          {words.reset}
        </button>
      </div>
      {tried && (
        <>
          <Compared tried={tried} open={open} />
          <TrialOnDiagram open={open} tried={tried} />
          <TakeTrial open={open} tried={tried} onTaken={() => setTried(null)} />
        </>
      )}
    </aside>
  );
}

function Compared({ tried, open }: { readonly tried: Tried; readonly open: OpenRoute }) {
  const lines = compareLayouts(tried.present, tried.other, unitsOf(open));
  const table = useRef<HTMLTableElement>(null);
  const { trialId } = tried;
  // biome-ignore lint/correctness/useExhaustiveDependencies: every trial is brought into view, for it lies under a long form
  useEffect(() => {
    table.current?.scrollIntoView({ block: "start" });
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- every trial is brought into view, for it lies under a long form
  }, [trialId]);
  return (
    <>
      <table ref={table} className="compared" aria-label={words.table}>
        <thead>
          <tr>
            <th scope="col">{words.figure}</th>
            <th scope="col" className="figure">
              {words.present}
            </th>
            <th scope="col" className="figure">
              {words.other}
            </th>
            <th scope="col" className="figure">
              {words.more}
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.name} className={line.present === line.other ? undefined : "is-other"}>
              <th scope="row">{line.name}</th>
              <td className="figure">{line.present}</td>
              <td className="figure">{line.other}</td>
              <td className="figure">{line.more}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ul className="notes">
        {tried.leftOut.map(({ reason, count }) => (
          <li key={reason}>{words.leftOut(count, reason)}</li>
        ))}
      </ul>
    </>
  );
}

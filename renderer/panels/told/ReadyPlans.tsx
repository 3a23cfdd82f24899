import type { ReadyWords } from "../../../core/explain/makeReadyWords.ts";
import { applyFix } from "../../app/edits.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { areEditsHeld } from "../../app/viewStore.ts";
import { Figure } from "../../explain/Figure.tsx";
import { rangeWords } from "./words.ts";

type Props = { readonly poleId: string; readonly ready: ReadyWords };

/** What would have to be done on a pole, the cheapest plan first; each can be recorded as one edit. */
export function ReadyPlans({ poleId, ready: { plans, why } }: Props) {
  const session = useSession();
  const isBusy = useView(areEditsHeld);
  const lookOnly = useLookOnly();
  return (
    <>
      {plans.map(({ says, total, fix }, at) => (
        <div key={fix.label} className="ready-plan">
          {plans.length > 1 && <h4>{at === 0 ? rangeWords.cheapest : rangeWords.next}</h4>}
          <ul>
            {says.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
          {total !== null && (
            <p>
              {rangeWords.total} <Figure of={{ figure: "makeReadyTotal", id: poleId, plan: at }}>{total}</Figure>
            </p>
          )}
          <button
            type="button"
            className="fix"
            disabled={isBusy || lookOnly !== null}
            title={lookOnly ?? rangeWords.fixTold}
            onClick={() => void applyFix(session, fix)}
          >
            {fix.label}
          </button>
        </div>
      ))}
      {why !== null && <p className="quiet">{why}</p>}
    </>
  );
}

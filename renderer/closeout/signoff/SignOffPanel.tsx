import { useMemo, useState } from "react";
import { gatesBefore, type Stage, stages } from "../../../core/closeout/gates.ts";
import { frozenFault, signaturesOf, stands } from "../../../core/closeout/signatures.ts";
import type { SignOff } from "../../../core/model/tables.ts";
import { actionOf } from "../../app/actions.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useView } from "../../app/useSession.ts";
import { areEditsHeld } from "../../app/viewStore.ts";
import { ActionButton } from "../../panels/Bar.tsx";
import { GateList } from "./GateList.tsx";
import { ReopenForm, SignForm } from "./SignForms.tsx";
import { signOffWords } from "./words.ts";

/** What is missing before the route is signed for, stage by stage; who signed, and the way to sign and to open it again. */
export function SignOffPanel({ open }: { readonly open: OpenRoute }) {
  const [asked, setAsked] = useState<Stage | "reopen" | null>(null);
  const gates = useMemo(() => gatesBefore(open.plant, "accepted", [...open.findings.values()]), [open]);
  const isBusy = useView(areEditsHeld);
  const isFileShut = useView((state) => state.isHostAway || (state.fileState?.lookOnly ?? null) !== null);
  const lookOnly = useLookOnly();
  const signatures = signaturesOf(open.route);
  const done = (): void => setAsked(null);
  const isOpenBefore = (stage: Stage): boolean =>
    gates.every((one) => one.missing.length === 0 || stages.indexOf(one.stage) > stages.indexOf(stage));
  return (
    <aside className="side sign-off" aria-label={signOffWords.title}>
      <h2>{signOffWords.title}</h2>
      <p className="quiet">{frozenFault(open.route) ? signOffWords.frozen : signOffWords.intro}</p>
      {signatures.some(stands) &&
        (asked === "reopen" ? (
          <ReopenForm open={open} onDone={done} />
        ) : (
          <button type="button" className="fix" disabled={isBusy || isFileShut} onClick={() => setAsked("reopen")}>
            {signOffWords.reopen}
          </button>
        ))}
      {stages.map((stage) => (
        <section key={stage} aria-label={signOffWords.stage(stage)}>
          <h3>{signOffWords.stage(stage)}</h3>
          <GateList open={open} gates={gates.filter((one) => one.stage === stage)} />
          <Signatures signatures={signatures.filter((one) => one.stage === stage)} />
          {asked === stage ? (
            <SignForm stage={stage} onDone={done} />
          ) : (
            <button
              type="button"
              className="fix"
              disabled={isBusy || lookOnly !== null || !isOpenBefore(stage)}
              title={lookOnly ?? (isOpenBefore(stage) ? undefined : signOffWords.shut)}
              onClick={() => setAsked(stage)}
            >
              {signOffWords.sign(stage)}
            </button>
          )}
        </section>
      ))}
      <h3>{signOffWords.deliver}</h3>
      <p className="quiet">{signOffWords.delivered}</p>
      <ActionButton action={actionOf("deliver")} />
      {signatures.length > 0 && <p className="quiet">{signOffWords.proof}</p>}
    </aside>
  );
}

function Signatures({ signatures }: { readonly signatures: readonly SignOff[] }) {
  if (signatures.length === 0) return null;
  return (
    <ol className="entries">
      {signatures.map((one) => (
        <li key={one.id} className="entry">
          <b className={stands(one) ? undefined : "is-reopened"}>{signOffWords.signedBy(one)}</b>
          {one.note !== "" && <span>{one.note}</span>}
          {!stands(one) && <span>{signOffWords.reopenedBy(one)}</span>}
          <span className="quiet">{signOffWords.digest}</span>
          <code className="digest">{one.digest}</code>
        </li>
      ))}
    </ol>
  );
}

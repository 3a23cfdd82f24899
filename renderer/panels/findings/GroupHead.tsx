import { useState } from "react";
import { runCommand } from "../../app/edits.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { areEditsHeld } from "../../app/viewStore.ts";
import { type FixPlan, planFixes } from "./fixAll.ts";
import type { FindingGroup } from "./grouping.ts";
import { findingsWords } from "./words.ts";

type Props = { readonly group: FindingGroup; readonly open: OpenRoute; readonly isOneRule: boolean };

/** The head of a group: how many, and where all are of one rule the fixes of all of them, looked at before they are applied. */
export function GroupHead({ group, open, isOneRule }: Props) {
  const mendable = group.findings.filter((one) => one.waiverId === null && one.fixes.length > 0);
  return (
    <li className="finding-group">
      <h3>
        {group.title} <span className="quiet">{group.findings.length}</span>
      </h3>
      {isOneRule && mendable.length > 1 && <FixAll group={{ ...group, findings: mendable }} open={open} />}
    </li>
  );
}

function FixAll({ group, open }: Omit<Props, "isOneRule">) {
  const session = useSession();
  const isBusy = useView(areEditsHeld);
  const lookOnly = useLookOnly();
  // the plan holds for the route it was made on; an edit in between asks for a new look
  const [tried, setTried] = useState<(FixPlan & { readonly route: OpenRoute["route"] }) | null>(null);
  const plan = tried?.route === open.route ? tried : null;
  const isHeld = isBusy || lookOnly !== null;
  if (plan === null)
    return (
      <button
        type="button"
        className="fix"
        disabled={isHeld}
        title={lookOnly ?? undefined}
        onClick={() => setTried({ ...planFixes(open.route, group.findings), route: open.route })}
      >
        {findingsWords.lookAtFixes(group.findings.length)}
      </button>
    );
  const label = findingsWords.applied(plan.steps.length, group.title);
  return (
    <span className="fix-all">
      <output>{findingsWords.applyAllTold(plan.steps.length, plan.refusedCount)}</output>
      <button
        type="button"
        className="fix"
        disabled={isHeld || plan.steps.length === 0}
        onClick={() => void runCommand(session, "steps.run", { label, steps: plan.steps })}
      >
        {findingsWords.applyAll(plan.steps.length)}
      </button>
      <button type="button" className="fix" onClick={() => setTried(null)}>
        {findingsWords.giveUp}
      </button>
    </span>
  );
}

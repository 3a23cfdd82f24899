import { useState } from "react";
import { thingName } from "../../core/closeout/thingName.ts";
import { basisWords } from "../../core/explain/basisWords.ts";
import { findingFigures } from "../../core/rules/findingFigures.ts";
import { applyFix, runCommand } from "../app/edits.ts";
import { goToFinding } from "../app/look.ts";
import type { OpenRoute, WindowFinding } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useLookOnly } from "../app/useLookOnly.ts";
import { useSession, useView } from "../app/useSession.ts";
import { areEditsHeld } from "../app/viewStore.ts";
import { PunchForm } from "../closeout/punch/PunchForm.tsx";
import { builtThingOf } from "../closeout/punch/punchSubject.ts";
import { punchWords } from "../closeout/words.ts";
import { FindingGlyph } from "./FindingGlyph.tsx";
import { FindingExplained } from "./findings/FindingExplained.tsx";
import { WaiveForm } from "./findings/WaiveForm.tsx";
import { findingsWords } from "./findings/words.ts";

type Props = {
  readonly finding: WindowFinding;
  readonly open: OpenRoute;
  /** Whether Tab reaches it; in the long list only one row is. */
  readonly isTabStop: boolean;
  /** Beside its own subject a row need not jump anywhere. */
  readonly isBrief?: boolean;
};

/** One finding: what, the figures, on what basis; the mends it offers, a waiver, its explanation. */
export function FindingRow({ finding, open, isTabStop, isBrief = false }: Props) {
  const session = useSession();
  const [isExplained, setIsExplained] = useState(false);
  const [isWaiving, setIsWaiving] = useState(false);
  const [isReworking, setIsReworking] = useState(false);
  const [first] = finding.subjects;
  const thing = first?.table === "reading" ? builtThingOf(open.plant, first.table, first.id) : null;
  const figures = findingFigures(finding, unitsOf(open)).join(", ");
  const waiver = finding.waiverId === null ? undefined : open.route.waiver.get(finding.waiverId);
  return (
    <li className={waiver ? "finding is-waived" : "finding"}>
      <div className="finding-line">
        <button
          type="button"
          className="finding-jump"
          data-finding={finding.key}
          tabIndex={isTabStop ? 0 : -1}
          onClick={() => goToFinding(session, finding)}
        >
          <FindingGlyph severity={finding.severity} />
          <span className="finding-words">
            <span className="finding-message">{finding.message}</span>
            {figures !== "" && <span className="finding-figures">{figures}</span>}
            {waiver && <span className="finding-waiver">{findingsWords.waivedBy(waiver.by, waiver.reason)}</span>}
            <span className="finding-basis">
              {isBrief ? "" : `${finding.title}. `}
              {basisWords(finding.basis)}
            </span>
          </span>
        </button>
        <Deeds
          finding={finding}
          isTabStop={isTabStop}
          isExplained={isExplained}
          onExplain={() => setIsExplained(!isExplained)}
          onWaive={() => setIsWaiving(true)}
          onRework={thing && (() => setIsReworking(true))}
        />
      </div>
      {isReworking && thing && (
        <PunchForm
          subject={thing}
          name={thingName(open.plant, thing)}
          finding={finding}
          onDone={() => setIsReworking(false)}
        />
      )}
      {isWaiving && <WaiveForm finding={finding} onDone={() => setIsWaiving(false)} />}
      {isExplained && <FindingExplained finding={finding} open={open} />}
    </li>
  );
}

type DeedsProps = {
  readonly finding: WindowFinding;
  readonly isTabStop: boolean;
  readonly isExplained: boolean;
  readonly onExplain: () => void;
  readonly onWaive: () => void;
  /** Puts what was read on the punch list; null where the finding is of no reading. */
  readonly onRework: (() => void) | null;
};

function Deeds({ finding, isTabStop, isExplained, onExplain, onWaive, onRework }: DeedsProps) {
  const session = useSession();
  const isBusy = useView(areEditsHeld);
  const lookOnly = useLookOnly();
  const { waiverId } = finding;
  const edit = (name: string, told: string, run: () => unknown) => (
    <button
      key={name}
      type="button"
      className="fix"
      tabIndex={isTabStop ? 0 : -1}
      disabled={isBusy || lookOnly !== null}
      title={lookOnly ?? told}
      onClick={() => void run()}
    >
      {name}
    </button>
  );
  return (
    <span className="finding-fixes">
      {finding.fixes.map((fix) => edit(fix.label, findingsWords.fixTold(fix.label), () => applyFix(session, fix)))}
      {onRework && waiverId === null && edit(punchWords.rework, punchWords.reworkTold, onRework)}
      {waiverId === null
        ? edit(findingsWords.waive, findingsWords.needed, onWaive)
        : edit(findingsWords.takeBack, findingsWords.takeBack, () =>
            runCommand(session, "waiver.remove", { waiverId }),
          )}
      <button
        type="button"
        className="fix"
        tabIndex={isTabStop ? 0 : -1}
        aria-expanded={isExplained}
        onClick={onExplain}
      >
        {findingsWords.explain}
      </button>
    </span>
  );
}

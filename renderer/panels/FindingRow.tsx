import { findingFigures } from "../../core/rules/findingFigures.ts";
import { applyFix } from "../app/edits.ts";
import { goToFinding } from "../app/look.ts";
import type { OpenRoute, WindowFinding } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { FindingGlyph } from "./FindingGlyph.tsx";

type Props = {
  readonly finding: WindowFinding;
  readonly open: OpenRoute;
  /** Whether Tab reaches it; in the long list only one row is. */
  readonly isTabStop: boolean;
  /** Beside its own subject a row need not jump anywhere. */
  readonly isBrief?: boolean;
};

const markWords = {
  seen: "read in the document",
  memory: "from memory",
  practice: "practice",
  computed: "worked out",
} as const;

/** One finding: what, the figures, on what basis, and the mends it offers. */
export function FindingRow({ finding, open, isTabStop, isBrief = false }: Props) {
  const session = useSession();
  const isBusy = useView((state) => state.isBusy || state.job !== null);
  const figures = findingFigures(finding, unitsOf(open)).join(", ");
  const { document, clause, edition, mark } = finding.basis;
  const basis = [document, clause, edition].filter(Boolean).join(", ");
  const waiver = finding.waiverId === null ? undefined : open.route.waiver.get(finding.waiverId);
  const tabIndex = isTabStop ? 0 : -1;
  return (
    <li className={waiver ? "finding is-waived" : "finding"}>
      <button
        type="button"
        className="finding-jump"
        data-finding={finding.key}
        tabIndex={tabIndex}
        onClick={() => goToFinding(session, finding)}
      >
        <FindingGlyph severity={finding.severity} />
        <span className="finding-words">
          <span className="finding-message">{finding.message}</span>
          {figures !== "" && <span className="finding-figures">{figures}</span>}
          {waiver && <span className="finding-waiver">{`waived by ${waiver.by}: ${waiver.reason}`}</span>}
          <span className="finding-basis">
            {isBrief ? "" : `${finding.title}. `}
            {basis}, {markWords[mark]}
          </span>
        </span>
      </button>
      <span className="finding-fixes">
        {finding.fixes.map((fix) => (
          <button
            key={fix.label}
            type="button"
            className="fix"
            tabIndex={tabIndex}
            disabled={isBusy}
            onClick={() => void applyFix(session, fix)}
          >
            {fix.label}
          </button>
        ))}
      </span>
    </li>
  );
}

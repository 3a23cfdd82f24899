import type { Severity } from "../../../core/rules/rule.ts";
import { useOpenRoute } from "../../app/useSession.ts";
import { FindingGlyph } from "../FindingGlyph.tsx";

const severities: readonly Severity[] = ["error", "warning", "note"];

/** How many findings stand now, in the bar, by severity. */
export function FindingsCount() {
  const open = useOpenRoute();
  if (!open) return null;
  const standing = [...open.findings.values()].filter((one) => one.waiverId === null);
  return (
    <p className="findings-count">
      {severities.map((severity) => (
        <span key={severity} className="count">
          <FindingGlyph severity={severity} />
          {standing.filter((one) => one.severity === severity).length}
        </span>
      ))}
    </p>
  );
}

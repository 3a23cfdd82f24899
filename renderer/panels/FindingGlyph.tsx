import type { Severity } from "../../core/rules/rule.ts";

/** The mark of a severity: filled diamond, open triangle, ring. */
export function FindingGlyph({ severity }: { readonly severity: Severity }) {
  return (
    <svg className="glyph" viewBox="-8 -8 16 16" width={14} height={14} role="img" aria-label={severity}>
      {severity === "error" && <path d="M0-7 7 0 0 7-7 0Z" fill="currentColor" />}
      {severity === "warning" && (
        <path d="M0-6 6.6 5.4-6.6 5.4Z" fill="none" stroke="currentColor" strokeWidth={1.8} strokeLinejoin="round" />
      )}
      {severity === "note" && <circle r={5.4} fill="none" stroke="currentColor" strokeWidth={1.8} />}
    </svg>
  );
}

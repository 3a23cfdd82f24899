import type { Severity } from "../../core/rules/rule.ts";
import type { WindowFinding } from "../app/routeStore.ts";

/** Findings that share a place on the screen: the worst gives the shape, the count stands inside. */
export type FindingMark = {
  readonly eastM: number;
  readonly northM: number;
  readonly severity: Severity;
  readonly keys: readonly string[];
};

const bucketPx = 26;
const rank = { error: 0, warning: 1, note: 2 } as const;

/**
 * Open findings gathered by buckets of the ground as large as a mark is on screen, so that marks never lie on each other.
 *
 * @param pxPerM  scale of the view; the buckets stand still while the view only moves
 */
export function findingMarks(findings: Iterable<WindowFinding>, pxPerM: number): readonly FindingMark[] {
  const buckets = new Map<string, WindowFinding[]>();
  for (const finding of findings) {
    if (!finding.at || finding.waiverId !== null) continue;
    const name = `${Math.floor((finding.at.eastM * pxPerM) / bucketPx)} ${Math.floor((finding.at.northM * pxPerM) / bucketPx)}`;
    const bucket = buckets.get(name);
    if (bucket) bucket.push(finding);
    else buckets.set(name, [finding]);
  }
  return [...buckets.values()].flatMap((all) => {
    const [worst] = all.sort((a, b) => rank[a.severity] - rank[b.severity]);
    if (!worst?.at) return [];
    return [{ ...worst.at, severity: worst.severity, keys: all.map((one) => one.key) }];
  });
}

import { freshIds } from "../model/freshId.ts";
import { type Route, settingsOf } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { Pole, Span } from "../model/tables.ts";
import type { SpanForReview } from "./importPlan.ts";
import { gridOfRoute } from "./placeRows.ts";
import type { NewSpan, SpanPole } from "./spanPole.ts";

/** A pole of the route as spans are made of it. */
export function spanPoles(route: Route): (pole: Pole) => SpanPole {
  const grid = gridOfRoute(route);
  return ({ tag, eastM, northM }) => ({ tag, eastM, northM, lonLat: grid?.toLonLat({ eastM, northM }) ?? null });
}

/**
 * Rows that add spans to a route. A span between two poles that are joined already, either way round, is left out; one between
 * two poles in the same place cannot be made and is noted.
 *
 * @param poleId id of a pole by tag, old or new
 */
export function planSpans(
  route: Route,
  spans: readonly NewSpan[],
  poleId: (tag: string) => string | undefined,
): { readonly rows: RowChange[]; readonly review: SpanForReview[]; readonly notes: string[] } {
  const nextId = freshIds(route, "span");
  const joined = new Set([...route.span.values()].map((span) => pairKey(span.fromPoleId, span.toPoleId)));
  const rows: RowChange[] = [];
  const review: SpanForReview[] = [];
  const notes: string[] = [];
  for (const span of spans) {
    const [fromPoleId, toPoleId] = [poleId(span.fromTag), poleId(span.toTag)];
    if (fromPoleId === undefined || toPoleId === undefined || joined.has(pairKey(fromPoleId, toPoleId))) continue;
    joined.add(pairKey(fromPoleId, toPoleId));
    if (!(span.lengthM > 0)) {
      notes.push(`${span.fromTag} and ${span.toTag} stand in one place: no span is made between them.`);
      continue;
    }
    const { lengthM, origin, note } = span;
    const after: Span = { id: nextId(), fromPoleId, toPoleId, lengthM, strandSectionId: null, origin, note };
    rows.push({ table: "span", id: after.id, before: null, after });
    const why = [span.review, lengthReview(route, lengthM)].filter((one) => one !== "").join(" ");
    if (why !== "") review.push({ spanId: after.id, fromTag: span.fromTag, toTag: span.toTag, lengthM, review: why });
  }
  return { rows, review, notes };
}

function lengthReview(route: Route, lengthM: number): string {
  const { minSpanM, maxSpanM } = settingsOf(route);
  if (lengthM > maxSpanM) return "It is longer than the longest span of the settings.";
  return lengthM < minSpanM ? "It is shorter than the shortest span of the settings." : "";
}

function pairKey(a: string, b: string): string {
  return JSON.stringify([a, b].sort());
}

import { spanEnds } from "./geometry.ts";
import { defineQuery } from "./plant.ts";

/** The ground under a span from pole to pole, straight between its points. */
export type GroundLine = {
  readonly kind: "known";
  /** By offset from the span's first pole, rising; the poles' own ground first and last. */
  readonly points: readonly { readonly offsetM: number; readonly groundM: number }[];
  /** True where nobody measured a point between the poles. */
  readonly isAssumed: boolean;
};

/** The ground under a span: its measured points between the ground at both poles. */
export const groundLine = defineQuery(
  "ground-line",
  (plant, spanId): GroundLine | { readonly kind: "unknown"; readonly why: string } => {
    const { lengthM } = plant.rowOf("span", spanId);
    const { from, to } = spanEnds(plant, spanId);
    const unmeasured = [from, to].filter((pole) => pole.groundM === null).map((pole) => pole.tag);
    if (from.groundM === null || to.groundM === null)
      return { kind: "unknown", why: `Nobody measured the ground at pole ${unmeasured.join(" and ")}.` };
    const between = plant
      .where("groundPoint", "spanId", spanId)
      .map((id) => plant.rowOf("groundPoint", id))
      .filter((point) => point.offsetM > 0 && point.offsetM < lengthM)
      .sort((a, b) => a.offsetM - b.offsetM)
      .map(({ offsetM, groundM }) => ({ offsetM, groundM }));
    return {
      kind: "known",
      points: [{ offsetM: 0, groundM: from.groundM }, ...between, { offsetM: lengthM, groundM: to.groundM }],
      isAssumed: between.length === 0,
    };
  },
);

/** Elevation of the ground at an offset within the span, m. */
export function groundAtM({ points }: Pick<GroundLine, "points">, offsetM: number): number {
  const next = points.findIndex((point) => point.offsetM >= offsetM);
  const to = points[next] ?? points.at(-1);
  const from = points[next - 1] ?? to;
  if (!from || !to) throw new RangeError("a ground line has two points or more");
  const runM = to.offsetM - from.offsetM;
  return runM === 0 ? to.groundM : from.groundM + ((to.groundM - from.groundM) * (offsetM - from.offsetM)) / runM;
}

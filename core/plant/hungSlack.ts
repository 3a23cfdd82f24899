import { cablePath } from "./cablePath.ts";
import { defineQuery, type Plant } from "./plant.ts";

/**
 * How much longer a cable is than its spans because it hangs in them, from its feed end to a point of a span, m; 0 where the cable does
 * not pass there.
 *
 * By the stringing sag of each span's strand; a terminal or coil that pulls the strand down adds less than the last digit told.
 *
 * @source length of a parabola, L + 8 D^2 / 3L; checked in tests/standards/sag.test.ts
 */
export function hungSlackM(plant: Plant, cableId: string, spanId: string, offsetM: number): number {
  const step = cablePath(plant, cableId).stepBySpan.get(spanId);
  const slack = slackBySpan(plant, cableId).get(spanId);
  if (!step || !slack) return 0;
  const insideM = step.reversed ? step.lengthM - offsetM : offsetM;
  return slack.beforeM + slack.ownM * Math.min(1, Math.max(0, insideM / step.lengthM));
}

type SpanSlack = { readonly beforeM: number; readonly ownM: number };

const slackBySpan = defineQuery("hung-slack", (plant, cableId): ReadonlyMap<string, SpanSlack> => {
  const slack = new Map<string, SpanSlack>();
  let beforeM = 0;
  for (const { spanId, lengthM } of cablePath(plant, cableId).steps) {
    const ownM = spanSlackM(plant, spanId, lengthM);
    if (!slack.has(spanId)) slack.set(spanId, { beforeM, ownM });
    beforeM += ownM;
  }
  return slack;
});

/** How much longer what hangs in a span is than the span itself, m; 0 without strand. */
export function spanSlackM(plant: Plant, spanId: string, lengthM: number): number {
  const { strandSectionId } = plant.rowOf("span", spanId);
  const sagFrac = strandSectionId === null ? 0 : plant.rowOf("strandSection", strandSectionId).stringingSagFrac;
  return (8 / 3) * sagFrac ** 2 * lengthM;
}

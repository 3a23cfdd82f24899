import { z } from "zod";
import { type Barred, freeHeights } from "../jointpole/barred.ts";
import { leastPerShare } from "../jointpole/leastPerShare.ts";
import { figure, notNegative, positive } from "./fields.ts";
import { defineTopic } from "./topic.ts";

const side = z.enum(["below", "above"]).describe("on which side of it our strand stays");

const wireAtPole = z.strictObject({
  heightM: positive("height of the other party's attachment on this pole, m above ground"),
  keepM: notNegative("what must be kept from it, m"),
  ours: z
    .enum(["below", "above", "either"])
    .describe("on which side of it our strand may be; either where both will do"),
});

const span = z.strictObject({
  lengthM: positive("length of the span to the far pole, m"),
  farHeightM: positive("our strand at the far pole, m above its ground"),
  farGroundM: figure("ground at the far pole over the ground at this one, m; 0 where left out").optional(),
  sagM: notNegative("midspan sag of our strand in the case looked at, m"),
  underStrandM: notNegative("how far the cable's underside hangs under the strand, m; 0 where left out").optional(),
  places: z
    .array(
      z.strictObject({
        fromM: notNegative("where it begins, m from this pole"),
        toM: notNegative("where it ends, m from this pole"),
        surfaceM: figure("how high it is over the ground at this pole, m"),
        keepM: notNegative("clearance that must be kept over it, m"),
      }),
    )
    .describe("what the span passes over"),
  wires: z
    .array(
      z.strictObject({
        nearHeightM: positive("their wire at this pole, m above ground"),
        farHeightM: positive("their wire at the far pole, m above its ground"),
        sagM: notNegative("its midspan sag, m"),
        keepM: notNegative("what must be kept from it all along the span, m"),
        ours: side,
      }),
    )
    .describe("other parties' wires in the span"),
});

type Request = z.output<typeof request>;
type Span = z.output<typeof span>;

const request = z.strictObject({
  lowestM: notNegative("lowest height the pole or the company allows, m above ground"),
  highestM: positive("highest height the pole allows, m above ground; none where left out").optional(),
  wires: z.array(wireAtPole).describe("other parties' attachments on the pole"),
  spans: z.array(span).describe("the spans beside the pole"),
});

export const attachmentRangeTopic = defineTopic({
  id: "attachment-range",
  title: "Heights on a pole at which our strand keeps all that must be kept, at the pole and in the spans beside it",
  request,
  reply: z.strictObject({
    free: z
      .array(
        z.strictObject({
          fromM: figure("lowest free height, m above ground"),
          fromBy: z.string().nullable().describe("what sets it, by its place in the request"),
          toM: figure("highest free height, m above ground; null where nothing is above").nullable(),
          toBy: z.string().nullable().describe("what sets it, by its place in the request"),
        }),
      )
      .describe("upwards; none where no height will do"),
  }),
  example: {
    lowestM: 5.4864,
    highestM: 9.75,
    wires: [
      { heightM: 7.9248, keepM: 0.762, ours: "below" },
      { heightM: 6.096, keepM: 0.3048, ours: "either" },
    ],
    spans: [
      {
        lengthM: 45.72,
        farHeightM: 6.7056,
        sagM: 0.45,
        underStrandM: 0.03,
        places: [{ fromM: 15, toM: 25, surfaceM: 0.2, keepM: 4.7244 }],
        wires: [{ nearHeightM: 7.9248, farHeightM: 7.9248, sagM: 0.9, keepM: 0.5715, ours: "below" }],
      },
    ],
  },
  answer(given) {
    const free = freeHeights(barredBy(given));
    return {
      free: free.map(({ fromM, toM, from, to }) => ({
        fromM,
        fromBy: from,
        toM: Number.isFinite(toM) ? toM : null,
        toBy: to,
      })),
    };
  },
});

const none = Number.NEGATIVE_INFINITY;
const endless = Number.POSITIVE_INFINITY;

function barredBy({ lowestM, highestM, wires, spans }: Request): readonly Barred<string>[] {
  return [
    { aboveM: none, belowM: lowestM, cause: "lowestM" },
    ...(highestM === undefined ? [] : [{ aboveM: highestM, belowM: endless, cause: "highestM" }]),
    ...wires.map(({ heightM, keepM, ours }, at) => ({
      aboveM: ours === "above" ? none : heightM - keepM,
      belowM: ours === "below" ? endless : heightM + keepM,
      cause: `wires.${at}`,
    })),
    ...spans.flatMap((one, at) => [
      ...one.places.map((place, n) => ({
        aboveM: none,
        belowM: overPlaceM(one, place),
        cause: `spans.${at}.places.${n}`,
      })),
      ...one.wires.map((wire, n) => ({ ...besideWire(one, wire), cause: `spans.${at}.wires.${n}` })),
    ]),
  ];
}

/** Least height here that keeps a place clear, m. */
function overPlaceM(one: Span, { fromM, toM, surfaceM, keepM }: Span["places"][number]): number {
  if (!(fromM <= toM && toM <= one.lengthM)) throw new RangeError("a place must begin before it ends, within its span");
  const { farHeightM, farGroundM = 0, sagM, underStrandM = 0 } = one;
  const spareAt = (atM: number) => {
    const share = 1 - atM / one.lengthM;
    const lineM = (farGroundM + farHeightM) * (1 - share) - 4 * sagM * share * (1 - share) - underStrandM;
    return { share, spareM: lineM - surfaceM - keepM };
  };
  return -leastPerShare([spareAt(fromM), spareAt(toM)], 4 * sagM).leastM;
}

function besideWire(one: Span, wire: Span["wires"][number]): Pick<Barred, "aboveM" | "belowM"> {
  const toUs = wire.ours === "below" ? 1 : -1;
  const spareAt = (share: number) => {
    const overUsM =
      wire.nearHeightM * share +
      (wire.farHeightM - one.farHeightM) * (1 - share) -
      4 * (wire.sagM - one.sagM) * share * (1 - share);
    return { share, spareM: toUs * overUsM - wire.keepM };
  };
  const { leastM } = leastPerShare([spareAt(1), spareAt(0)], toUs * 4 * (wire.sagM - one.sagM));
  return wire.ours === "below" ? { aboveM: leastM, belowM: endless } : { aboveM: none, belowM: -leastM };
}

import type { ClearanceLimit } from "../model/tables.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { poleSeparation, separationLimitFor, spanSeparations } from "../plant/separation.ts";
import { spanSag } from "../plant/spanSag.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { formatLength } from "../units/formatLength.ts";
import { significantText } from "../units/significantText.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { lengthInput } from "./inputs.ts";
import { clearanceLimitTold } from "./limitWords.ts";

/** Height of another party's attachment over our strand, at their pole. */
export function explainPoleSeparation(
  plant: Plant,
  attachmentId: string,
  units: UnitSystem,
): Explanation | NoExplanation {
  const other = plant.rowOf("attachment", attachmentId);
  const title = `Separation at pole ${plant.rowOf("pole", other.poleId).tag} from ${other.owner || "another party"}`;
  const separation = poleSeparation(plant, attachmentId);
  if (separation === null)
    return { kind: "unknown", title, why: "The pole carries no strand of ours, or this has no separation of its own." };
  const { aboveM, ourAttachmentId } = separation;
  return {
    kind: "known",
    title,
    words: "Height of the other party's attachment less the height of our strand at the same pole.",
    formula: "h - o",
    inputs: [
      lengthInput(
        ["h", `${other.owner || "other party"} above ground`],
        other.heightM,
        [units, "height"],
        ["attachment", other.id],
      ),
      lengthInput(
        ["o", "our strand above ground"],
        other.heightM - aboveM,
        [units, "height"],
        ourAttachmentId === null ? ["settings", plant.settings().id] : ["attachment", ourAttachmentId],
      ),
    ],
    result: { symbol: "S", value: aboveM, unit: "m", text: formatLength(aboveM, units, "clearance") },
    limit: limitOf(separationLimitFor(plant, other, "AtPole"), other.voltageV, units),
    source: "difference of two heights on one pole",
    assumed: [
      ...(ourAttachmentId === null
        ? ["This pole lacks the height of our strand; the company's usual one was taken."]
        : []),
      ...(aboveM < 0 ? ["Our strand is the upper one here."] : []),
    ],
  };
}

/** Least distance between our strand and another party's wire in a span. */
export function explainSpanSeparation(
  plant: Plant,
  spanId: string,
  wireId: string,
  units: UnitSystem,
): Explanation | NoExplanation {
  const { owner } = plant.rowOf("attachment", wireId);
  const title = `Separation in span ${spanName(plant, spanId)} from ${owner || "another party"}`;
  const separations = spanSeparations(plant, spanId);
  const sag = spanSag(plant, spanId);
  if (separations.kind === "unknown") return { kind: "unknown", title, why: separations.why };
  if (sag.kind === "unknown") return { kind: "unknown", title, why: sag.why };
  const wire = separations.wires.find((one) => one.fromAttachmentId === wireId);
  if (!wire) return { kind: "unknown", title, why: "The wire does not run through this span." };
  const { fromPoleId, toPoleId } = plant.rowOf("span", spanId);
  const ours = [fromPoleId, toPoleId].map((poleId) => strandAtPole(plant, poleId));
  const theirs = [wire.fromAttachmentId, wire.toAttachmentId];
  const settings = plant.settings();
  const ends = [0, 1].flatMap((end) => {
    const our = ours[end];
    const their = theirs[end];
    if (!our || their === undefined) return [];
    return [
      lengthInput(
        [`h${end + 1}`, `their wire at the ${end === 0 ? "first" : "far"} pole`],
        plant.rowOf("attachment", their).heightM,
        [units, "height"],
        ["attachment", their],
      ),
      lengthInput(
        [`o${end + 1}`, `our strand at the ${end === 0 ? "first" : "far"} pole`],
        our.heightM,
        [units, "height"],
        our.attachmentId === null ? ["settings", settings.id] : ["attachment", our.attachmentId],
      ),
    ];
  });
  const gap = "h1 - o1 + (h2 - o2 - h1 + o1) · x / L - 4 · Dh · (x / L) · (1 - x / L) + y";
  return {
    kind: "known",
    title,
    words: `Distance on the straight lines between the poles, less the sag of the upper wire and with the sag of the lower one. ${wire.weAreAbove ? "Our strand is the upper one, at its largest sag." : "Theirs is the upper one; ours hangs as strung."}`,
    formula: wire.weAreAbove ? `0 - (${gap})` : gap,
    inputs: [
      ...ends,
      lengthInput(["x", "where it is least, from the first pole"], wire.atOffsetM, [units, "span"], ["span", spanId]),
      lengthInput(["L", "span length"], sag.lengthM, [units, "span"], ["span", spanId]),
      lengthInput(
        ["Dh", `sag ${wire.isSagAssumed ? "assumed for" : "measured on"} their wire`],
        wire.otherSagM,
        [units, "sag"],
        wire.isSagAssumed ? ["settings", settings.id] : ["span", spanId],
      ),
      lengthInput(["y", "sag of our strand there"], wire.ourSagM, [units, "sag"], ["span", spanId]),
    ],
    result: { symbol: "S", value: wire.leastM, unit: "m", text: formatLength(wire.leastM, units, "clearance") },
    limit: limitOf(separationLimitFor(plant, wire.kept, "InSpan"), wire.kept.voltageV, units),
    source: "two parabolas on their chords; textbook statics",
    assumed: ["Attachments of one owner and kind at both poles are taken as one wire, the lowest with the lowest."],
  };
}

function limitOf(limit: ClearanceLimit | undefined, voltageV: number, units: UnitSystem): Explanation["limit"] {
  const isRaised = limit !== undefined && voltageV > limit.coversV && limit.moreMPerV > 0;
  const words = isRaised
    ? `Least separation of the clearance set, with what it asks more for ${significantText(voltageV / 1000, 4)} kV to ground beyond ${significantText(limit.coversV / 1000, 4)} kV`
    : "Least separation of the clearance set";
  return clearanceLimitTold(limit, units, words);
}

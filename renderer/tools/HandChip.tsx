import { planeDistanceM, spansAtPole } from "../../core/plant/geometry.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { useView } from "../app/useSession.ts";
import type { Picture } from "../canvas/paint.ts";
import { pointOfSpan } from "../canvas/spanMarks.ts";
import { screenX, screenY } from "../canvas/viewport.ts";
import { offsetWords } from "../panels/words.ts";
import type { Hand } from "./hand.ts";
import { toolWords } from "./words.ts";

/** The live dimension beside what is dragged: how far from which pole, what it snapped to, why it cannot be let go. */
export function HandChip({ plant, picture }: { readonly plant: Plant; readonly picture: Picture }) {
  const hand = useView((state) => state.hand);
  const isTyping = useView((state) => state.exact !== null);
  if (!hand || isTyping) return null;
  const [left, top] = chipPlace(picture, hand);
  return (
    <div className="hand-chip" style={{ left, top }} aria-hidden="true">
      {dimensionLines(plant, hand, picture.units).map((line) => (
        <strong key={line}>{line}</strong>
      ))}
      {hand.kind !== "drop" && hand.snap && <span className="hand-snap">{hand.snap.words}</span>}
      {hand.refusal !== null && <span className="hand-refusal">{hand.refusal}</span>}
    </div>
  );
}

function chipPlace({ scene, view }: Picture, hand: Hand): readonly [number, number] {
  const at = hand.kind === "terminal" ? pointOfSpan(scene.spans, hand.spanId, hand.offsetM) : hand;
  return [screenX(view, at.eastM) + 16, screenY(view, at.northM) - 64];
}

function dimensionLines(plant: Plant, hand: Hand, units: UnitSystem): readonly string[] {
  if (hand.kind === "terminal") {
    const { lengthM, fromPoleId, toPoleId } = plant.rowOf("span", hand.spanId);
    const isNearFirst = hand.offsetM <= lengthM / 2;
    const fromPoleM = isNearFirst ? hand.offsetM : lengthM - hand.offsetM;
    const { tag } = plant.rowOf("pole", isNearFirst ? fromPoleId : toPoleId);
    return [toolWords.fromPole(offsetWords(fromPoleM, units), tag)];
  }
  if (hand.kind === "drop") {
    if (!hand.target) return [];
    const { terminalId, port } = hand.target;
    return [toolWords.toPort(plant.rowOf("terminal", terminalId).name, port)];
  }
  return spansAtPole(plant, hand.poleId).map((spanId) => {
    const span = plant.rowOf("span", spanId);
    const far = plant.rowOf("pole", span.fromPoleId === hand.poleId ? span.toPoleId : span.fromPoleId);
    return toolWords.spanTo(far.tag, formatLength(planeDistanceM(hand, far), units, "span"));
  });
}

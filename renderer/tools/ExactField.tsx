import type { Plant } from "../../core/plant/plant.ts";
import { useSession, useView } from "../app/useSession.ts";
import type { Picture } from "../canvas/paint.ts";
import { pointOfSpan } from "../canvas/spanMarks.ts";
import { screenX, screenY } from "../canvas/viewport.ts";
import { giveUp } from "./carry.ts";
import { DiagramField, focusDiagram } from "./DiagramField.tsx";
import { keepExact, typedOffset } from "./exact.ts";
import { toolWords } from "./words.ts";

/** Where a person types how far from its pole a terminal hangs. */
export function ExactField({ plant, picture }: { readonly plant: Plant; readonly picture: Picture }) {
  const session = useSession();
  const exact = useView((state) => state.exact);
  const isDragged = useView((state) => state.hand !== null);
  if (!exact || !plant.row("terminal", exact.terminalId)) return null;
  const { offsetM } = plant.rowOf("terminal", exact.terminalId);
  const { lengthM } = plant.rowOf("span", exact.spanId);
  const at = pointOfSpan(picture.scene.spans, exact.spanId, Math.min(offsetM, lengthM));
  const typed = typedOffset(plant, exact, picture.units);
  const keep = async (): Promise<void> => {
    await keepExact(session);
    if (session.view.getState().exact === null) focusDiagram();
  };
  return (
    <DiagramField
      label={toolWords.exactLabel(plant.rowOf("pole", exact.poleId).tag)}
      value={exact.text}
      problem={typed.ok ? null : typed.what}
      leftPx={screenX(picture.view, at.eastM) + 14}
      topPx={screenY(picture.view, at.northM) - 84}
      isChosen={!isDragged}
      onChange={(text) => session.view.setState({ exact: { ...exact, text } })}
      onKeep={() => void keep()}
      onGiveUp={() => {
        giveUp(session);
        focusDiagram();
      }}
    />
  );
}

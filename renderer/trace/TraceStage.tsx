import { memo } from "react";
import { Layer, Shape, Stage } from "react-konva";
import { useView } from "../app/useSession.ts";
import type { LaidCurve } from "./curveColumns.ts";
import {
  drawCursors,
  drawCurve,
  drawMarks,
  drawScales,
  otherDashes,
  type TraceLook,
  type TraceMark,
} from "./drawTrace.ts";

const still = { listening: false, perfectDrawEnabled: false } as const;

type Props = {
  readonly look: TraceLook;
  /** The curve told about first, then those laid over it. */
  readonly curves: readonly LaidCurve[];
  readonly marks: readonly TraceMark[];
};

/** The drawing of traces: curves and places below, what follows the hand above, so that a step of it costs no curve. */
export function TraceStage(props: Props) {
  const { frame } = props.look;
  const { a, b, held, underM } = useView((state) => state.traces);
  return (
    <Stage width={frame.widthPx} height={frame.heightPx} listening={false}>
      <StillLayer {...props} />
      <Layer listening={false}>
        <Shape {...still} sceneFunc={(pen) => drawCursors(pen, props.look, { a, b, held, underM })} />
      </Layer>
    </Stage>
  );
}

const StillLayer = memo(function StillLayer({ look, curves, marks }: Props) {
  return (
    <Layer listening={false}>
      <Shape
        {...still}
        sceneFunc={(pen) => {
          drawMarks(pen, look, marks);
          for (let index = curves.length - 1; index >= 0; index -= 1) {
            const curve = curves[index];
            const dash = index === 0 ? [] : (otherDashes[(index - 1) % otherDashes.length] ?? []);
            if (curve) drawCurve(pen, look, curve, dash);
          }
          drawScales(pen, look);
        }}
      />
    </Layer>
  );
});

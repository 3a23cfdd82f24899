import { useEffect, useMemo, useRef } from "react";
import { Layer, Rect, Shape, Stage } from "react-konva";
import { fitAll } from "../app/look.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { offerViewHandle } from "../app/viewHandle.ts";
import { drawLight } from "../balance/drawLight.ts";
import { drawStates } from "../closeout/drawStates.ts";
import { drawTrial } from "../layout/drawTrial.ts";
import { trialMarks } from "../layout/trialMarks.ts";
import { AddingLayer } from "../tools/adding/AddingLayer.tsx";
import { AddingRail } from "../tools/adding/AddingRail.tsx";
import { DiagramMenu } from "../tools/DiagramMenu.tsx";
import { pressOnDiagram } from "../tools/diagramKeys.ts";
import { drawDropEnds, drawMeasure, drawPreview } from "../tools/drawPreview.ts";
import { Hands } from "../tools/Hands.tsx";
import { keepView, recallView } from "../tools/keptView.ts";
import { inkFrac } from "../tools/kinds.ts";
import { DescribedList } from "./DescribedList.tsx";
import { drawCrossings } from "./drawCrossings.ts";
import { drawFindings } from "./drawFindings.ts";
import { drawGround, drawScale } from "./drawGround.ts";
import { drawHands } from "./drawHands.ts";
import { drawDrops, drawHouses } from "./drawHouses.ts";
import { drawClosures, drawCoils, drawTerminals } from "./drawHung.ts";
import { openLabelDrawer } from "./drawLabels.ts";
import { drawLeaders } from "./drawLeaders.ts";
import { drawPins } from "./drawPins.ts";
import { drawPoles } from "./drawPoles.ts";
import { drawGroundPoints, drawGuys, drawStructures } from "./drawSite.ts";
import { drawSpans } from "./drawSpans.ts";
import { HoverCard } from "./HoverCard.tsx";
import type { Scene } from "./scene.ts";
import { StationRuler } from "./straight/StationRuler.tsx";
import { useLatest } from "./useLatest.ts";
import { useMeasure } from "./useMeasure.ts";
import { usePicture } from "./usePicture.ts";
import { usePointer } from "./usePointer.ts";
import { useStageSize } from "./useStageSize.ts";

const still = { listening: false, perfectDrawEnabled: false } as const;

/** Kinds in the order they are inked; each is one shape over prepared data. */
const kinds = [
  ["crossings", drawCrossings],
  ["structures", drawStructures],
  ["drops", drawDrops],
  ["houses", drawHouses],
  ["leaders", drawLeaders],
  ["guys", drawGuys],
  ["spans", drawSpans],
  ["groundPoints", drawGroundPoints],
  ["coils", drawCoils],
  ["closures", drawClosures],
  ["terminals", drawTerminals],
  ["poles", drawPoles],
  ["pins", drawPins],
] as const;

/** The strand diagram, true to the ground. */
export function Diagram({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const ground = useRef<HTMLDivElement>(null);
  const picture = usePicture(open);
  const selection = useView((state) => state.selection);
  const hover = useView((state) => state.hover);
  const hand = useView((state) => state.hand);
  const measure = useView((state) => state.measure);
  const treated = useView((state) => state.kinds);
  const light = useView((state) => state.light);
  const isClosing = useView((state) => state.closeout.isOpen);
  const trial = useTrial(open, picture.scene);
  useStageSize(ground);
  const box = usePointer(ground, picture);
  const drawLabels = useLabelDrawer();
  const latest = useLatest(picture);

  const isSized = picture.view.widthPx > 0;
  const isDrawn = picture.scene.box !== null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: shown whole when another route opens or a first row comes in
  useEffect(() => {
    if (!isSized || !isDrawn) return undefined;
    session.view.setState(({ ways }) => ({ drawnAs: ways.drawnAs }));
    if (!recallView(session)) fitAll(session, true);
    return keepView(session);
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- shown whole when another route opens or a first row comes in
  }, [open.routeId, isSized, isDrawn, session]);
  useEffect(() => {
    offerViewHandle(
      session,
      () => latest.current,
      () => ground.current?.getBoundingClientRect() ?? new DOMRect(),
    );
  }, [session, latest]);

  return (
    <>
      <div className="ground" ref={ground}>
        <DiagramMenu picture={latest} ground={ground}>
          <div
            className="ground-hand"
            data-diagram
            role="application"
            aria-roledescription="strand diagram"
            aria-label="Strand diagram. Arrow keys walk from pole to pole, with Alt over terminals too, and nudge a chosen terminal; 0 shows the whole route."
            aria-describedby="described-route"
            // biome-ignore lint/a11y/noNoninteractiveTabindex: a diagram one walks by arrow keys takes the focus
            tabIndex={0}
            onKeyDown={(event) => pressOnDiagram(session, open.plant, picture, event)}
          >
            <Stage width={picture.view.widthPx} height={picture.view.heightPx} listening={false}>
              <Layer listening={false}>
                <Shape {...still} sceneFunc={(pen) => drawGround(pen, picture)} />
              </Layer>
              <Layer listening={false}>
                {kinds.map(([name, draw]) => (
                  <Shape
                    key={name}
                    {...still}
                    opacity={inkFrac(treated, name)}
                    sceneFunc={(pen) => draw(pen, picture)}
                  />
                ))}
                {isClosing && <Shape {...still} sceneFunc={(pen) => drawStates(pen, picture, open.plant)} />}
                {light && <Shape {...still} sceneFunc={(pen) => drawLight(pen, picture, light.seen)} />}
                <Shape {...still} sceneFunc={(pen) => drawLabels(pen, picture)} />
                {trial && <Shape {...still} sceneFunc={(pen) => drawTrial(pen, picture, trial)} />}
                <Shape {...still} sceneFunc={(pen) => drawFindings(pen, picture)} />
              </Layer>
              <Layer listening={false}>
                <Shape {...still} sceneFunc={(pen) => drawHands(pen, picture, selection, hover)} />
                <Shape {...still} sceneFunc={(pen) => drawDropEnds(pen, picture, selection)} />
                <Shape {...still} sceneFunc={(pen) => drawMeasure(pen, picture, measure)} />
                <Shape {...still} sceneFunc={(pen) => drawPreview(pen, picture, open.plant, hand)} />
                <Shape {...still} sceneFunc={(pen) => drawScale(pen, picture)} />
                {box && (
                  <Rect
                    {...still}
                    x={Math.min(box.x, box.toX)}
                    y={Math.min(box.y, box.toY)}
                    width={Math.abs(box.toX - box.x)}
                    height={Math.abs(box.toY - box.y)}
                    stroke={picture.ink.accent}
                    strokeWidth={1}
                    dash={[4, 3]}
                  />
                )}
              </Layer>
            </Stage>
          </div>
        </DiagramMenu>
        <StationRuler open={open} picture={picture} />
        <AddingLayer open={open} picture={picture} />
        <AddingRail />
        <HoverCard plant={open.plant} units={picture.units} />
        <DescribedList plant={open.plant} picture={picture} />
      </div>
      <Hands open={open} picture={picture} />
    </>
  );
}

/** The trial that is to be seen, ready for drawing, as long as the route is the one it was tried on. */
function useTrial({ plant, route }: OpenRoute, scene: Scene) {
  const trial = useView((state) => state.trial);
  return useMemo(() => (trial?.route === route ? trialMarks(plant, scene, trial) : null), [plant, route, scene, trial]);
}

function useLabelDrawer() {
  const measure = useMeasure();
  return useMemo(() => openLabelDrawer(measure), [measure]);
}

import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from "react";
import { Layer, Rect, Shape, Stage } from "react-konva";
import { fitAll, placeOfRef } from "../app/look.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { offerViewHandle } from "../app/viewHandle.ts";
import { titleOf } from "../panels/words.ts";
import { DescribedList } from "./DescribedList.tsx";
import { drawCrossings } from "./drawCrossings.ts";
import { drawFindings } from "./drawFindings.ts";
import { drawGround, drawScale } from "./drawGround.ts";
import { drawHands } from "./drawHands.ts";
import { drawDrops, drawHouses } from "./drawHouses.ts";
import { drawClosures, drawCoils, drawTerminals } from "./drawHung.ts";
import { openLabelDrawer } from "./drawLabels.ts";
import { drawPoles } from "./drawPoles.ts";
import { drawSpans } from "./drawSpans.ts";
import { stepTo } from "./gesture.ts";
import { HoverCard } from "./HoverCard.tsx";
import { openMeasure } from "./measureText.ts";
import { useLatest } from "./useLatest.ts";
import { usePicture } from "./usePicture.ts";
import { usePointer } from "./usePointer.ts";
import { useStageSize } from "./useStageSize.ts";
import { type Direction, nearestPole, neighbour } from "./walk.ts";

const still = { listening: false, perfectDrawEnabled: false } as const;

/** Kinds in the order they are inked; each is one shape over prepared data. */
const kinds = [
  ["crossings", drawCrossings],
  ["drops", drawDrops],
  ["houses", drawHouses],
  ["spans", drawSpans],
  ["coils", drawCoils],
  ["closures", drawClosures],
  ["terminals", drawTerminals],
  ["poles", drawPoles],
] as const;

const arrows: Readonly<Record<string, Direction>> = {
  ArrowLeft: "left",
  ArrowRight: "right",
  ArrowUp: "up",
  ArrowDown: "down",
};

/** The strand diagram, true to the ground. */
export function Diagram({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const ground = useRef<HTMLDivElement>(null);
  const picture = usePicture(open);
  const selection = useView((state) => state.selection);
  const hover = useView((state) => state.hover);
  useStageSize(ground);
  const box = usePointer(ground, picture);
  const drawLabels = useLabelDrawer();
  const latest = useLatest(picture);

  const isSized = picture.view.widthPx > 0;
  const isDrawn = picture.scene.box !== null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: shown whole when another route opens or a first row comes in
  useEffect(() => {
    if (isSized && isDrawn) fitAll(session, true);
  }, [open.routeId, isSized, isDrawn, session]);
  useEffect(() => {
    offerViewHandle(
      session,
      () => latest.current,
      () => ground.current?.getBoundingClientRect() ?? new DOMRect(),
    );
  }, [session, latest]);

  const walk = (event: KeyboardEvent): void => {
    const direction = arrows[event.key];
    if (!direction || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const standing = session.view.getState().selection.at(-1) ?? null;
    const from = standing ? placeOfRef(open.plant, standing) : null;
    const { centreEastM, centreNorthM } = picture.view;
    const ref = from
      ? neighbour(picture.scene, from, direction, standing)
      : nearestPole(picture.scene, centreEastM, centreNorthM);
    if (ref) stepTo(session, ref, titleOf(open.plant, ref));
  };

  return (
    <div className="ground" ref={ground}>
      <div
        className="ground-hand"
        data-diagram
        role="application"
        aria-roledescription="strand diagram"
        aria-label="Strand diagram. Arrow keys walk from pole to terminal, 0 shows the whole route."
        aria-describedby="described-route"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a diagram one walks by arrow keys takes the focus
        tabIndex={0}
        onKeyDown={walk}
      >
        <Stage width={picture.view.widthPx} height={picture.view.heightPx} listening={false}>
          <Layer listening={false}>
            <Shape {...still} sceneFunc={(pen) => drawGround(pen, picture)} />
          </Layer>
          <Layer listening={false}>
            {kinds.map(([name, draw]) => (
              <Shape key={name} {...still} sceneFunc={(pen) => draw(pen, picture)} />
            ))}
            <Shape {...still} sceneFunc={(pen) => drawLabels(pen, picture)} />
            <Shape {...still} sceneFunc={(pen) => drawFindings(pen, picture)} />
          </Layer>
          <Layer listening={false}>
            <Shape {...still} sceneFunc={(pen) => drawHands(pen, picture, selection, hover)} />
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
      <HoverCard plant={open.plant} units={picture.units} />
      <DescribedList plant={open.plant} picture={picture} />
    </div>
  );
}

function useLabelDrawer() {
  const [fontCount, setFontCount] = useState(0);
  useEffect(() => {
    let isHere = true;
    void document.fonts.ready.then(() => isHere && setFontCount((count) => count + 1));
    return () => {
      isHere = false;
    };
  }, []);
  // widths measured before the font came are wrong
  return useMemo(() => openLabelDrawer(openMeasure(fontCount)), [fontCount]);
}

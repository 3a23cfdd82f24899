import type { RowChange } from "../../../core/model/rowChange.ts";
import type { Pole, Terminal } from "../../../core/model/tables.ts";
import { farPoleId, type Point, spansAtPole } from "../../../core/plant/geometry.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { hang, modelFace } from "../../canvas/hungMarks.ts";
import { terminalPlacePx } from "../../canvas/hungPlace.ts";
import { ringPx } from "../../canvas/level.ts";
import type { Picture } from "../../canvas/paint.ts";
import { screenX, screenY } from "../../canvas/viewport.ts";

type PreviewProps = { readonly plant: Plant; readonly picture: Picture; readonly rows: readonly RowChange[] };

/** What is arranged as it would be, in the accent. */
export function ArrangePreview({ plant, picture, rows }: PreviewProps) {
  const poles = new Map(
    rows.flatMap((row) => (row.table === "pole" && row.after ? [[row.id, row.after] as const] : [])),
  );
  // what hangs beside a pole goes with it
  const terminals = rows.flatMap((row) =>
    row.table === "terminal" && row.after && poles.size === 0 ? [row.after] : [],
  );
  const { widthPx, heightPx } = picture.view;
  return (
    <svg
      className="arrange-preview"
      aria-hidden="true"
      width={widthPx}
      height={heightPx}
      data-count={terminals.length + poles.size}
    >
      {[...poles.values()].map((pole) => (
        <PoleGhost key={pole.id} plant={plant} picture={picture} pole={pole} moved={poles} />
      ))}
      {terminals.map((one) => (
        <TerminalGhost key={one.id} plant={plant} picture={picture} terminal={one} />
      ))}
    </svg>
  );
}

type TerminalProps = { readonly plant: Plant; readonly picture: Picture; readonly terminal: Terminal };

function TerminalGhost({ plant, picture: { scene, view }, terminal }: TerminalProps) {
  const { id, spanId, offsetM, terminalModelId } = terminal;
  const mark = { ...hang(plant, scene.spans, id, spanId, offsetM), ...modelFace(plant, terminalModelId) };
  const { x, y, widthPx, heightPx, turnRad } = terminalPlacePx(mark, view);
  const turn = `translate(${x} ${y}) rotate(${(turnRad * 180) / Math.PI})`;
  return <rect x={-widthPx / 2} y={-heightPx / 2} width={widthPx} height={heightPx} rx={4} transform={turn} />;
}

type PoleProps = {
  readonly plant: Plant;
  readonly picture: Picture;
  readonly pole: Pole;
  readonly moved: ReadonlyMap<string, Pole>;
};

function PoleGhost({ plant, picture, pole, moved }: PoleProps) {
  const [x, y] = onPage(picture, pole);
  return (
    <>
      <circle cx={x} cy={y} r={ringPx(picture.view) + 2} />
      {spansAtPole(plant, pole.id).map((spanId) => {
        const farId = farPoleId(plant, spanId, pole.id);
        const [farX, farY] = onPage(picture, moved.get(farId) ?? plant.rowOf("pole", farId));
        return <line key={spanId} x1={x} y1={y} x2={farX} y2={farY} strokeDasharray="6 4" />;
      })}
    </>
  );
}

function onPage({ view }: Picture, { eastM, northM }: Point): readonly [number, number] {
  return [screenX(view, eastM), screenY(view, northM)];
}

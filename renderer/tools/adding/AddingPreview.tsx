import type { Point } from "../../../core/plant/geometry.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { bandReachPx } from "../../canvas/drawCrossings.ts";
import { ringPx } from "../../canvas/level.ts";
import type { Picture } from "../../canvas/paint.ts";
import { pointOfSpan } from "../../canvas/spanMarks.ts";
import { screenX, screenY } from "../../canvas/viewport.ts";
import type { Pull } from "./AddingLayer.tsx";
import type { AddingState } from "./addingState.ts";
import type { Aim } from "./aim.ts";

type PreviewProps = {
  readonly adding: AddingState;
  readonly picture: Picture;
  readonly aim: Aim | null;
  readonly pull: Pull | null;
};

/** What the next click would do, in the accent. */
export function AddingPreview({ adding, picture, aim, pull }: PreviewProps) {
  const { tool, form } = adding;
  const band = bandOf(form) ?? pull;
  const point = form?.kind === "unit" || form?.kind === "guy" ? onPage(picture, form.at) : null;
  const isOnSpan = aim?.span && aim.poleId === null && adding.fromPoleId === null;
  return (
    <svg aria-hidden="true" width={picture.view.widthPx} height={picture.view.heightPx}>
      {band && <Band picture={picture} pull={band} />}
      {point && <circle cx={point[0]} cy={point[1]} r={8} />}
      {form?.kind === "guy" && (
        <NextSpan
          fromPoleId={form.poleId}
          picture={picture}
          to={form.at}
          isTold={picture.scene.places.straight === null}
        />
      )}
      {form?.kind === "reach" && (
        <NextSpan fromPoleId={form.fromPoleId} picture={picture} to={form.toward} isTold={false} />
      )}
      {aim && !form && adding.fromPoleId !== null && (
        <NextSpan
          fromPoleId={adding.fromPoleId}
          picture={picture}
          to={aim.poleId === null ? aim.point : picture.scene.places.poleAt(aim.poleId)}
          isTold={picture.scene.places.straight === null}
        />
      )}
      {aim && !form && aim.poleId !== null && <PoleRing poleId={aim.poleId} picture={picture} />}
      {aim && !form && isOnSpan && ["pole", "terminal", "crossing", "structure", "groundPoint"].includes(tool) && (
        <SpanTick picture={picture} aim={aim} />
      )}
      {aim && !form && aim.poleId === null && !isOnSpan && ["pole", "lateral", "unit"].includes(tool) && (
        <circle cx={aim.x} cy={aim.y} r={ringPx(picture.view)} strokeDasharray="3 2" />
      )}
    </svg>
  );
}

function bandOf(form: AddingState["form"]): Pull | null {
  if (form?.kind !== "crossing" && form?.kind !== "structure") return null;
  const alongM = form.kind === "crossing" ? form.widthM : form.lengthM;
  return { spanId: form.spanId, fromM: form.offsetM - alongM / 2, toM: form.offsetM + alongM / 2 };
}

function onPage({ view }: Picture, { eastM, northM }: Point): readonly [number, number] {
  return [screenX(view, eastM), screenY(view, northM)];
}

function PoleRing({ poleId, picture }: { readonly poleId: string; readonly picture: Picture }) {
  const [x, y] = onPage(picture, picture.scene.places.poleAt(poleId));
  return <circle cx={x} cy={y} r={ringPx(picture.view) + 4} />;
}

type NextSpanProps = {
  readonly fromPoleId: string;
  readonly picture: Picture;
  readonly to: Point;
  /** Whether its length is written beside it. */
  readonly isTold: boolean;
};

function NextSpan({ fromPoleId, picture, to, isTold }: NextSpanProps) {
  const from = picture.scene.places.poleAt(fromPoleId);
  const [[x1, y1], [x2, y2]] = [onPage(picture, from), onPage(picture, to)];
  const lengthM = Math.hypot(to.eastM - from.eastM, to.northM - from.northM);
  return (
    <>
      <line x1={x1} y1={y1} x2={x2} y2={y2} strokeDasharray="6 4" />
      {isTold && lengthM > 0 && (
        <text x={(x1 + x2) / 2} y={(y1 + y2) / 2 - 8} textAnchor="middle">
          {formatLength(lengthM, picture.units, "span")}
        </text>
      )}
    </>
  );
}

function SpanTick({ picture, aim }: { readonly picture: Picture; readonly aim: Aim }) {
  if (!aim.span || !picture.scene.spans.positionOf.has(aim.span.spanId)) return null;
  const place = pointOfSpan(picture.scene.spans, aim.span.spanId, aim.span.offsetM);
  const [x, y] = onPage(picture, place);
  const { belowX, belowY } = place.frame;
  return (
    <>
      <line x1={x - belowX * 9} y1={y - belowY * 9} x2={x + belowX * 9} y2={y + belowY * 9} />
      <text x={x + 8} y={y - 12}>
        {formatLength(aim.span.offsetM, picture.units, "span")}
      </text>
    </>
  );
}

function Band({ picture, pull }: { readonly picture: Picture; readonly pull: Pull }) {
  const { spans } = picture.scene;
  if (!spans.positionOf.has(pull.spanId)) return null;
  const [a, b] = [pull.fromM, pull.toM].map((offsetM) => pointOfSpan(spans, pull.spanId, offsetM));
  if (!a || !b) return null;
  const reach = bandReachPx(picture.level);
  const corner = (place: typeof a, side: 1 | -1): string => {
    const [x, y] = onPage(picture, place);
    return `${x + place.frame.belowX * reach * side},${y + place.frame.belowY * reach * side}`;
  };
  const [x, y] = onPage(picture, b);
  return (
    <>
      <polygon points={[corner(a, -1), corner(b, -1), corner(b, 1), corner(a, 1)].join(" ")} />
      <text x={x + 10} y={y - reach}>
        {formatLength(Math.abs(pull.toM - pull.fromM), picture.units, "span")}
      </text>
    </>
  );
}

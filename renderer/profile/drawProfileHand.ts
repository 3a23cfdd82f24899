import type { Plant } from "../../core/plant/plant.ts";
import { poleTopM, stepStationM } from "../../core/plant/profile.ts";
import { placeOnProfile } from "../../core/plant/profilePlace.ts";
import { type RefKey, splitRef } from "../app/ref.ts";
import type { Pen } from "../canvas/paint.ts";
import { elevationY, stationScalePx, stationX } from "./frame.ts";
import { type ProfileSight, pointOnProfile } from "./profileHit.ts";
import type { ProfileLook } from "./profileScene.ts";
import type { ProfileView } from "./profileView.ts";

/** What is chosen, held and told about, in the accent. */
export function drawProfileHand(
  pen: Pen,
  { ink }: ProfileLook,
  plant: Plant,
  sight: ProfileSight,
  {
    atM,
    attachmentId,
    hand,
    selection,
  }: Pick<ProfileView, "atM" | "attachmentId" | "hand"> & {
    readonly selection: readonly RefKey[];
  },
): void {
  const { frame } = sight;
  pen.strokeStyle = ink.accent;
  pen.fillStyle = ink.accent;
  if (atM !== null) {
    const x = stationX(frame, atM);
    pen.lineWidth = 1;
    pen.beginPath();
    pen.moveTo(x, 0);
    pen.lineTo(x, frame.heightPx - stationScalePx);
    pen.stroke();
  }
  // a wash, so that lines and letters under it stay readable
  pen.globalAlpha = 0.35;
  pen.lineWidth = 9;
  for (const ref of selection) drawChosen(pen, plant, sight, ref);
  pen.globalAlpha = 1;
  const held = hand?.attachmentId ?? attachmentId;
  const point = held === null ? null : pointOnProfile(plant, sight, `attachment/${held}`);
  if (!point) return;
  pen.lineWidth = 2;
  pen.beginPath();
  pen.arc(point[0], point[1], 7, 0, Math.PI * 2);
  if (hand) pen.fill();
  pen.stroke();
}

function drawChosen(pen: Pen, plant: Plant, { profile, frame }: ProfileSight, ref: RefKey): void {
  const { table, id } = splitRef(ref);
  pen.beginPath();
  if (table === "pole") {
    const pole = profile.poles.find((one) => one.poleId === id);
    if (!pole) return;
    const x = stationX(frame, pole.stationM);
    pen.moveTo(x, elevationY(frame, pole.footM));
    pen.lineTo(x, elevationY(frame, poleTopM(pole)));
  } else if (table === "span") {
    const step = profile.steps.find((one) => one.span.spanId === id);
    for (const [i, offsetM] of step?.span.line ? step.span.offsetsM.entries() : []) {
      if (!step) continue;
      const x = stationX(frame, stepStationM(step, offsetM));
      const y = elevationY(frame, step.span.line?.stringing[i] ?? 0);
      if (i === 0) pen.moveTo(x, y);
      else pen.lineTo(x, y);
    }
  } else {
    const place = placeOnProfile(plant, profile, { table, id });
    if (place?.elevationM == null) return;
    pen.arc(stationX(frame, place.stationM), elevationY(frame, place.elevationM) + 6, 13, 0, Math.PI * 2);
  }
  pen.stroke();
}

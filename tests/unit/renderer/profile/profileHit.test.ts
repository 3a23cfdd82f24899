import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { profileOf } from "../../../../core/plant/profile.ts";
import { elevationY, fitFrame, stationX } from "../../../../renderer/profile/frame.ts";
import { attachmentUnder, rowUnder } from "../../../../renderer/profile/profileHit.ts";
import { smallRoute, withRows } from "../../../fixtures/route/buildRoute.ts";

const blank = { leftM: 0, baseM: 0, pxPerM: 1, upPxPerM: 10, widthPx: 900, heightPx: 360 };
const barn = {
  id: "barn",
  spanId: "span-1",
  name: "Barn",
  kind: "building",
  offsetM: 20,
  lengthM: 4,
  bottomM: null,
} as const;
const route = withRows(smallRoute(), "structure", [{ ...barn, side: "left", besideM: 3, heightM: 4 }]);
const profile = profileOf(openPlant(route), "cable-1");

test("of poles that stand close on the page the attachment of the nearest one is under the pointer", () => {
  const frame = { ...fitFrame(blank, profile), pxPerM: 0.1 };
  const pole = profile.poles[2];
  const strand = pole?.attachments.find((one) => one.kind === "ourStrand");
  if (!(pole && strand)) throw new Error("the small route's third pole carries strand");
  const y = elevationY(frame, pole.footM + strand.heightM);
  expect(attachmentUnder({ profile, frame }, stationX(frame, pole.stationM), y)).toBe(strand.id);
});

test("a building beside the line can be chosen where it is drawn, and the ground beside it cannot", () => {
  const frame = fitFrame(blank, profile);
  const sight = { profile, frame };
  expect(rowUnder(sight, stationX(frame, 20), elevationY(frame, 102))).toBe("structure/barn");
  expect(rowUnder(sight, stationX(frame, 30), elevationY(frame, 102))).toBeNull();
});

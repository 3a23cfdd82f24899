import fc from "fast-check";
import { expect, test } from "vitest";
import { openPlant, type Plant } from "../../core/plant/plant.ts";
import { type Profile, profileOf, profileWith } from "../../core/plant/profile.ts";
import { openDraft } from "../../renderer/profile/draft.ts";
import { drawLand, drawPlant } from "../../renderer/profile/drawProfile.ts";
import { fitFrame, zoomFrame } from "../../renderer/profile/frame.ts";
import { type ProfileLook, partedScene, profileScene } from "../../renderer/profile/profileScene.ts";
import { changed, smallRoute, withRows } from "../fixtures/route/buildRoute.ts";
import { openRecordingPen } from "./recordingPen.ts";

const cableId = "cable-1";
const ink = { ground: "#fff", ink: "#000", soft: "#555", hair: "#ccc", wash: "#eee", accent: "#088", letterFrac: 1 };
const blank = { leftM: 0, baseM: 0, pxPerM: 1, upPxPerM: 10, widthPx: 900, heightPx: 360 };
const measure = (text: string, sizePx: number): number => text.length * sizePx * 0.6;

function route() {
  const ground = changed(smallRoute({ poleCount: 6 }), "pole", "pole-5", { groundM: null, aboveGroundM: null });
  const building = { spanId: "span-1", kind: "building", lengthM: 4, side: "left", bottomM: null } as const;
  return withRows(ground, "structure", [
    { ...building, id: "shed", name: "Shed", offsetM: 20, heightM: 3, bottomM: null, besideM: 0 },
    { ...building, id: "barn", name: "Barn", offsetM: 32, heightM: 5, bottomM: null, besideM: 1 },
  ]);
}

/** A look at a profile: the whole path, or closer about a place of the page. */
const looks: fc.Arbitrary<(profile: Profile) => ProfileLook> = fc
  .record({
    times: fc.constantFrom(0.05, 1, 2, 6),
    x: fc.integer({ min: 0, max: 900 }),
    y: fc.integer({ min: 0, max: 360 }),
  })
  .map(({ times, x, y }) => (profile) => ({
    ink,
    units: "us",
    frame: zoomFrame(fitFrame(blank, profile), [x, y], times, times),
  }));

const drag = fc.record({
  attachment: fc.nat({ max: 100 }),
  heightsM: fc.array(fc.double({ min: 0.5, max: 11, noNaN: true }), { minLength: 1, maxLength: 4 }),
});

function inked(draw: (pen: ReturnType<typeof openRecordingPen>["pen"]) => void): readonly string[] {
  const { pen, pieces } = openRecordingPen();
  draw(pen);
  return pieces();
}

function inkedAnew(plant: Plant, look: ProfileLook): readonly string[] {
  const scene = profileScene(plant, profileOf(plant, cableId), look, measure);
  return inked((pen) => {
    drawLand(pen, look, scene);
    drawPlant(pen, look, scene);
  });
}

let movedCount = 0;

test("over any drags, what stands still on the profile and what moves above it are together the profile made anew", () => {
  fc.assert(
    fc.property(fc.array(drag, { minLength: 1, maxLength: 4 }), looks, (drags, lookAt) => {
      let present = route();
      for (const { attachment, heightsM } of drags) {
        const plant = openPlant(present);
        const profile = profileOf(plant, cableId);
        const look = lookAt(profile);
        const all = [...present.attachment.values()];
        const held = all[attachment % all.length];
        if (!held) throw new Error("the small route has attachments");
        const whole = profileScene(plant, profile, look, measure);
        const { still } = partedScene(whole, held.poleId);
        const kept = inked((pen) => {
          drawLand(pen, look, whole);
          drawPlant(pen, look, still);
        });
        const draft = openDraft(present, held.id);
        for (const heightM of heightsM) {
          draft.hang(heightM);
          const shown = profileWith(profile, draft.plant, held.poleId);
          const { moving } = partedScene(profileScene(draft.plant, shown, look, measure), held.poleId);
          const above = inked((pen) => drawPlant(pen, look, moving));
          present = changed(present, "attachment", held.id, { heightM });
          const anew = inkedAnew(openPlant(present), look);
          expect([...kept, ...above].sort()).toEqual([...anew].sort());
          if (above.length > 0 && kept.length > 0) movedCount += 1;
        }
      }
    }),
    { numRuns: 40 },
  );
  expect(movedCount).toBeGreaterThan(60);
});

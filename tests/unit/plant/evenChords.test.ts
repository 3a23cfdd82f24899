import fc from "fast-check";
import { expect, test } from "vitest";
import { evenChords } from "../../../core/plant/evenChords.ts";
import { planeDistanceM } from "../../../core/plant/geometry.ts";

test("points on a straight line come to its equal parts", () => {
  const line = [0, 10, 95, 120].map((eastM) => ({ eastM, northM: 0 }));
  const even = evenChords(line) ?? [];
  expect(even.map((one) => Math.round(one.eastM * 1e6) / 1e6)).toEqual([0, 40, 80, 120]);
});

test("round a right angle the three chords are equal, and shorter than a third of the way", () => {
  const line = [
    { eastM: 0, northM: 0 },
    { eastM: 50, northM: 0 },
    { eastM: 60, northM: 0 },
    { eastM: 60, northM: 45 },
  ];
  const even = evenChords(line) ?? [];
  const chordsM = even.slice(1).map((one, i) => planeDistanceM(even[i] ?? one, one));
  for (const chordM of chordsM) expect(chordM).toBeCloseTo(chordsM[0] ?? 0, 6);
  expect(chordsM[0]).toBeLessThan(35);
});

test("along any line that bends less than a right angle at a point, all chords come out equal and the ends stay", () => {
  const leg = fc.record({
    lengthM: fc.double({ min: 5, max: 90, noNaN: true }),
    turn: fc.double({ min: -1, max: 1, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(leg, { minLength: 2, maxLength: 9 }), (legs) => {
      let [eastM, northM, headingRad] = [0, 0, 0];
      const line = [{ eastM, northM }];
      legs.forEach(({ lengthM, turn }, i) => {
        // bends to either side in turn, as a road does, so that the line never closes on itself
        headingRad = (Math.abs(turn) * (i % 2 === 0 ? 1 : -1) * Math.PI) / 4;
        eastM += lengthM * Math.cos(headingRad);
        northM += lengthM * Math.sin(headingRad);
        line.push({ eastM, northM });
      });
      const even = evenChords(line);
      expect(even).not.toBeNull();
      expect(even?.[0]).toEqual(line[0]);
      expect(even?.at(-1)).toEqual(line.at(-1));
      const chordsM = (even ?? []).slice(1).map((one, i) => planeDistanceM(even?.[i] ?? one, one));
      expect(Math.max(...chordsM) - Math.min(...chordsM)).toBeLessThan(1e-5);
    }),
  );
});

test("one point is no line", () => {
  expect(evenChords([{ eastM: 0, northM: 0 }])).toBeNull();
});

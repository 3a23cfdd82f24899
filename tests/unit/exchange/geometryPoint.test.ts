import { expect, test } from "vitest";
import { pointOfGeometry } from "../../../core/exchange/geometryPoint.ts";

const square = (x: number, y: number, side: number) => [
  [x, y],
  [x + side, y],
  [x + side, y + side],
  [x, y + side],
  [x, y],
];

test.each([
  ["a point is its own place", { type: "Point", coordinates: [1, 2, 30] }, [1, 2]],
  [
    "points give their mean",
    {
      type: "MultiPoint",
      coordinates: [
        [0, 0],
        [2, 4],
      ],
    },
    [1, 2],
  ],
  [
    "a line gives the middle of its length",
    {
      type: "LineString",
      coordinates: [
        [0, 0],
        [1, 0],
        [1, 3],
      ],
    },
    [1, 1],
  ],
  [
    "of several lines the longest counts",
    {
      type: "MultiLineString",
      coordinates: [
        [
          [9, 9],
          [9, 10],
        ],
        [
          [0, 0],
          [4, 0],
        ],
      ],
    },
    [2, 0],
  ],
  ["a polygon gives the centre of its area", { type: "Polygon", coordinates: [square(0, 0, 2)] }, [1, 1]],
  [
    "an L of three squares gives the centre of its area",
    {
      type: "Polygon",
      coordinates: [
        [
          [0, 0],
          [2, 0],
          [2, 1],
          [1, 1],
          [1, 2],
          [0, 2],
          [0, 0],
        ],
      ],
    },
    [5 / 6, 5 / 6],
  ],
  [
    "of several polygons the largest counts",
    { type: "MultiPolygon", coordinates: [[square(9, 9, 1)], [square(0, 0, 4)]] },
    [2, 2],
  ],
  [
    "a polygon without area gives the mean of its corners",
    {
      type: "Polygon",
      coordinates: [
        [
          [0, 0],
          [2, 0],
          [4, 0],
          [0, 0],
        ],
      ],
    },
    [2, 0],
  ],
])("%s", (_, geometry, [lonDeg, latDeg]) => {
  const read = pointOfGeometry(geometry);
  expect(read.ok && read.point[0]).toBeCloseTo(lonDeg ?? Number.NaN, 12);
  expect(read.ok && read.point[1]).toBeCloseTo(latDeg ?? Number.NaN, 12);
});

test.each([
  [
    "a ring that does not close",
    {
      type: "Polygon",
      coordinates: [
        [
          [0, 0],
          [1, 0],
          [1, 1],
          [0, 1],
        ],
      ],
    },
  ],
  ["a height that is text", { type: "Point", coordinates: [1, 2, "3"] }],
  ["an empty collection", { type: "GeometryCollection", geometries: [] }],
  ["no geometry", 7],
])("%s is refused with what would be accepted", (_, geometry) => {
  expect(pointOfGeometry(geometry)).toMatchObject({ ok: false, accepted: expect.stringContaining("RFC 7946") });
});

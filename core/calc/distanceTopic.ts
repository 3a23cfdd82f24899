import { z } from "zod";
import { distanceM } from "../geodesy/distance.ts";
import { figure } from "./fields.ts";
import { defineTopic } from "./topic.ts";

const place = z
  .tuple([
    figure("longitude, degrees, east positive").min(-180).max(180),
    figure("latitude, degrees, north positive").min(-90).max(90),
  ])
  .describe("longitude and latitude on WGS 84, degrees");

export const distanceTopic = defineTopic({
  id: "distance",
  title: "Ground distance between two places on the WGS 84 ellipsoid",
  request: z.strictObject({ from: place, to: place }),
  reply: z.strictObject({ distanceM: figure("m, level: no height is in it") }),
  example: { from: [-83, 40], to: [-82.9995, 40.0005] },
  answer: ({ from, to }) => ({ distanceM: distanceM(from, to) }),
});

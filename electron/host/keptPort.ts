import { join } from "node:path";
import { z } from "zod";
import { type Kept, keptJson } from "./keptJson.ts";

/** The port a window was last served on, so that a page left open finds the program again; 0 where none is remembered. */
export function keptPort(configFolder: string): Kept<number> {
  return keptJson(join(configFolder, "port.json"), z.number().int().min(0).max(65_535), 0);
}

import { z } from "zod";
import { type DrawnLayer, drawnLayers } from "./drawnLayers.ts";

/** What a company calls layers; the others go by the program's own names. */
export type LayerNames = ReadonlyMap<DrawnLayer, string>;

/**
 * Longest name of a layer: R12 takes 31 signs, and labels of the route stand on a layer of the same name and -TEXT.
 *
 * @source DXF reference of R12 (AC1009), symbol table names, from memory
 */
const longest = 26;
const behindLabels = "-TEXT";

/** The names in the words of the settings: `strand=C-STRN,cable=C-CABL`. */
export function layerNamesOf(text: string): LayerNames {
  const pairs = text.split(",").map((one) => one.split("="));
  return new Map(
    drawnLayers.flatMap((layer) => {
      const name = pairs.find(([key]) => key === layer)?.[1];
      return name ? [[layer, name] as const] : [];
    }),
  );
}

/** The words of the settings with a layer called otherwise; an empty name gives it back the program's own. */
export function withLayerName(text: string, layer: DrawnLayer, name: string): string {
  const names = new Map(layerNamesOf(text)).set(layer, name);
  return drawnLayers.flatMap((one) => (names.get(one) ? [`${one}=${names.get(one)}`] : [])).join(",");
}

/** Why the names cannot be used in a drawing of any format; null where they can. */
export function layerNamesTrouble(text: string): string | null {
  const names = layerNamesOf(text);
  if (withLayerName(text, "text", names.get("text") ?? "") !== text) return "it names a layer that no drawing has";
  const bySign = new Map<string, DrawnLayer>();
  for (const layer of drawnLayers) {
    const name = names.get(layer) ?? layer.toUpperCase();
    if (!/^[A-Z0-9$_-]+$/.test(name)) return `"${name}" has signs that DXF does not take: A to Z, 0 to 9, - _ $`;
    if (name.length > longest) return `"${name}" is longer than ${longest} letters`;
    if (name === "0" || name.endsWith(behindLabels))
      return `"${name}" is kept for what a DXF file puts there by itself`;
    const other = bySign.get(name);
    if (other) return `"${name}" is the name of two layers: ${other} and ${layer}`;
    bySign.set(name, layer);
  }
  return null;
}

/** Names of layers as the settings keep them. */
export const layerNamesWords = z
  .string()
  .max(2000)
  .refine((text) => layerNamesTrouble(text) === null, { error: ({ input }) => layerNamesTrouble(String(input)) ?? "" });

/** Layers a sheet is split into, in the order they are painted. */
export const sheetLayers = [
  "watermark",
  "ground",
  "crossings",
  "others",
  "drops",
  "units",
  "cable",
  "strand",
  "slack",
  "terminals",
  "poles",
  "dimensions",
  "findings",
  "revisions",
  "frame",
  "tables",
  "text",
] as const;

/** Every layer a drawing may have: those of sheets, and what only the route in model space keeps apart. */
export const drawnLayers = [...sheetLayers, "structures", "spans", "guys", "closures"] as const;
export type DrawnLayer = (typeof drawnLayers)[number];

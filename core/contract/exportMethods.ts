import { z } from "zod";

/** What other programs are handed: the schedules as a workbook, or the route as a drawing or on the globe. */
export const exportFormats = ["xlsx", "dxf", "kml", "geojson"] as const;
export type ExportFormat = (typeof exportFormats)[number];

/** The route for other programs. */
export const exportMethods = {
  "export.file": {
    request: z.strictObject({ routeId: z.string().min(1), format: z.enum(exportFormats) }),
    reply: z.strictObject({ fileName: z.string(), contentBase64: z.string() }),
  },
  /** All that is handed over of a closed-out route, as one archive. */
  "deliver.make": {
    request: z.strictObject({ routeId: z.string().min(1), jobId: z.string() }),
    reply: z.strictObject({ fileName: z.string(), contentBase64: z.string() }),
  },
} as const;

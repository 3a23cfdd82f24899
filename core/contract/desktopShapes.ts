import { z } from "zod";

/** One action of the window as the menu of the desktop shows it. */
const menuAction = z.strictObject({
  id: z.string(),
  name: z.string(),
  /** Key as the action table writes it, such as `Mod+Shift+Z`; null for none. */
  key: z.string().nullable(),
  place: z.string().nullable(),
  isOff: z.boolean(),
});
export const menuActions = z.array(menuAction).readonly();
export type MenuAction = z.infer<typeof menuAction>;

/** A drawing set handed to the desktop to be shown. */
export const drawnSet = z.strictObject({ fileName: z.string(), pdfBase64: z.string() });

/** Where a window stood when it was closed, screen pixels. */
export const windowPlace = z.strictObject({
  x: z.number(),
  y: z.number(),
  width: z.number(),
  height: z.number(),
  isMaximized: z.boolean(),
});
export type WindowPlace = z.infer<typeof windowPlace>;

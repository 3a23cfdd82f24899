import { z } from "zod";

/** What a person chose for the window on this machine, whatever route is open. */
export const machineChoices = z.strictObject({
  theme: z.enum(["system", "light", "dark", "contrast"]),
  /** Size of words against the usual, per cent. */
  textPercent: z.number().min(75).max(200),
  /** Keys by action, where they differ from the usual. */
  keys: z.record(z.string(), z.array(z.string()).readonly()),
  /** What was last gone to in the finder, latest first. */
  recent: z.array(z.string()).readonly(),
});
export type MachineChoices = Readonly<z.infer<typeof machineChoices>>;

/** The usual. */
export const usualChoices: MachineChoices = { theme: "system", textPercent: 100, keys: {}, recent: [] };

/** What is kept for this machine and person. */
export const machineMethods = {
  "machine.read": { request: z.strictObject({}), reply: machineChoices },
  "machine.keep": { request: machineChoices, reply: z.strictObject({}) },
} as const;

import { machineChoices, usualChoices } from "../../core/contract/machineMethods.ts";
import { ok } from "../../core/model/result.ts";
import { keptOrHeld } from "./keptJson.ts";
import type { Handlers } from "./serve.ts";

/**
 * Answers about the choices of this machine.
 *
 * @param configFolder  folder they are kept in; null keeps them while the program runs
 */
export function machineHandlers(configFolder: string | null): Pick<Handlers, "machine.read" | "machine.keep"> {
  const kept = keptOrHeld(configFolder, "window.json", machineChoices, usualChoices);
  return {
    "machine.read": () => ok(kept.read()),
    "machine.keep": (choices) => {
      kept.write(choices);
      return ok({});
    },
  };
}

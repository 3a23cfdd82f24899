import { createStore } from "zustand/vanilla";
import { type MachineChoices, usualChoices } from "../../core/contract/machineMethods.ts";
import type { HostClient } from "./hostClient.ts";

/** Choices of this machine: theme, size of words, keys, what was last looked for. */
export const machine = createStore<MachineChoices>(() => usualChoices);

/** Reads what was kept, and keeps every later choice; the window follows theme and size from here on. */
export async function followMachine(host: HostClient): Promise<void> {
  const read = await host.call("machine.read", {});
  if (read.ok) machine.setState(read.value, true);
  dress(machine.getState());
  machine.subscribe((choices) => {
    dress(choices);
    void host.call("machine.keep", choices);
  });
  moreContrast().addEventListener("change", () => dress(machine.getState()));
}

/** Calls back whenever colours of the page may have changed; answers with how to stop. */
export function onColours(listener: () => void): () => void {
  const queries = [matchMedia("(prefers-color-scheme: dark)"), matchMedia("(forced-colors: active)"), moreContrast()];
  for (const query of queries) query.addEventListener("change", listener);
  const stop = machine.subscribe(listener);
  return () => {
    for (const query of queries) query.removeEventListener("change", listener);
    stop();
  };
}

function dress({ theme, textPercent }: MachineChoices): void {
  const { dataset, style } = document.documentElement;
  dataset.theme = theme;
  dataset.contrast = theme === "contrast" || moreContrast().matches ? "more" : "usual";
  style.fontSize = `${textPercent}%`;
}

function moreContrast(): MediaQueryList {
  return matchMedia("(prefers-contrast: more)");
}

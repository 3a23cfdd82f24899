import type { UnitSystem } from "../../units/unitSystem.ts";
import type { Draft } from "../book.ts";
import { stationText } from "../paper/quantityText.ts";

/** A piece of a line that a sheet shows, by the distance along it, m. */
export type Stretch = { readonly name: string; readonly startM: number; readonly endM: number };

/** Up to so many pieces stand in a title with their stations. */
const mostInTitle = 2;

/** Title of a sheet with pieces of lines: pieces that go on in each other as one; of many, the first and the last by name. */
export function stretchTitle(
  kind: string,
  stretches: readonly Stretch[],
  system: UnitSystem,
): Pick<Draft, "title" | "names"> {
  const joined: Stretch[] = [];
  for (const one of stretches) {
    const last = joined.at(-1);
    const goesOn = last?.name === one.name && Math.abs(last.endM - one.startM) < 0.01;
    if (last && goesOn) joined[joined.length - 1] = { ...last, endM: one.endM };
    else joined.push(one);
  }
  const told = joined.map(
    ({ name, startM, endM }) => `${name}, ${stationText(startM, system)} to ${stationText(endM, system)}`,
  );
  if (joined.length <= mostInTitle) return { title: `${kind}, ${told.join("; ")}` };
  return {
    title: `${kind}, ${joined[0]?.name} to ${joined.at(-1)?.name}`,
    names: told.map((one) => `${kind}, ${one}`),
  };
}

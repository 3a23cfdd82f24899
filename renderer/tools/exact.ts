import type { Plant } from "../../core/plant/plant.ts";
import { parseLengthM } from "../../core/units/parseLength.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { runCommand } from "../app/edits.ts";
import { openRouteOf, type Session, tell, unitsOf } from "../app/session.ts";
import { offsetWords } from "../panels/words.ts";
import { repeatOf } from "./arrange/arrange.ts";
import { plainArranging } from "./arrange/arranging.ts";
import type { ExactEntry } from "./hand.ts";
import { oneTerminal } from "./oneTerminal.ts";
import { toolWords } from "./words.ts";

/** An offset a person typed, from the span's first pole, m, or what is wrong with it. */
type TypedOffset = { readonly ok: true; readonly offsetM: number } | { readonly ok: false; readonly what: string };

/** Opens the field for the exact distance: of the terminal under the hand, else of the chosen one. */
export function openExact(session: Session, typed: string | null): void {
  const { hand } = session.view.getState();
  const { plant } = openRouteOf(session);
  const id = oneTerminal(session);
  const place =
    hand?.kind === "terminal" ? hand : id === null ? null : { ...plant.rowOf("terminal", id), terminalId: id };
  if (!place) return;
  const { terminalId, spanId, offsetM } = place;
  const span = plant.rowOf("span", spanId);
  const isNearFirst = offsetM <= span.lengthM / 2;
  const fromPoleM = isNearFirst ? offsetM : span.lengthM - offsetM;
  const poleId = isNearFirst ? span.fromPoleId : span.toPoleId;
  const text = typed ?? offsetWords(fromPoleM, unitsOf(session.store.get()));
  session.view.setState({ exact: { terminalId, spanId, poleId, text } });
}

/** The offset an entry means. */
export function typedOffset(plant: Plant, entry: ExactEntry, units: UnitSystem): TypedOffset {
  const parsed = parseLengthM(entry.text, units);
  if (!parsed.ok) return { ok: false, what: `${parsed.what} ${parsed.mend}` };
  const { lengthM, fromPoleId } = plant.rowOf("span", entry.spanId);
  if (!(parsed.valueM > 0)) return { ok: false, what: toolWords.notPositive };
  if (parsed.valueM >= lengthM) return { ok: false, what: toolWords.pastPole };
  return { ok: true, offsetM: entry.poleId === fromPoleId ? parsed.valueM : lengthM - parsed.valueM };
}

/** Hangs the terminal at the typed distance; a distance that cannot be read stays in the field and changes nothing. */
export async function keepExact(session: Session): Promise<void> {
  const { exact } = session.view.getState();
  if (!exact) return;
  const typed = typedOffset(openRouteOf(session).plant, exact, unitsOf(session.store.get()));
  if (!typed.ok) return tell(session, typed.what);
  const { terminalId, spanId, text } = exact;
  const lastDone = repeatOf({ ...plainArranging, way: "alignTerminals", distance: text.trim() });
  const view = { exact: null, hand: null, lastDone };
  await runCommand(session, "terminal.move", { terminalId, spanId, offsetM: typed.offsetM }, { view });
}

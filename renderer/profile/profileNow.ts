import { cablePath, cablesInSpan } from "../../core/plant/cablePath.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { type Profile, profileOf } from "../../core/plant/profile.ts";
import { placeOnProfile } from "../../core/plant/profilePlace.ts";
import { type RefKey, splitRef } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { openRouteOf, type Session } from "../app/session.ts";

/** The cable whose path is shown: the one asked for, else the first that runs somewhere; null where none does. */
function shownCableId({ route, plant }: OpenRoute, wantedId: string | null): string | null {
  if (wantedId !== null && route.cable.has(wantedId)) return wantedId;
  return runningCables({ route, plant })[0]?.id ?? null;
}

/** Cables that run along the route: those from the hub before those spliced on, by name. */
export function runningCables({ route, plant }: Pick<OpenRoute, "route" | "plant">) {
  return [...route.cable.values()]
    .filter(({ id }) => cablePath(plant, id).steps.length > 0)
    .sort(
      (a, b) =>
        Number(a.fromClosureId !== null) - Number(b.fromClosureId !== null) ||
        a.name.localeCompare(b.name, undefined, { numeric: true }),
    );
}

/** The profile of the cable whose path is shown; null where none runs. */
export function shownProfile(open: OpenRoute, wantedId: string | null): Profile | null {
  const shownId = shownCableId(open, wantedId);
  return shownId === null ? null : profileOf(open.plant, shownId);
}

/** The profile of a session; null where no cable runs. */
export function profileNow(session: Session): Profile | null {
  return shownProfile(openRouteOf(session), session.view.getState().profile.cableId);
}

/** A cable that passes a row, the shown one where it does; null where none does. */
export function cablePassing(plant: Plant, ref: RefKey, shownId: string): string | null {
  const row = splitRef(ref);
  if (placeOnProfile(plant, profileOf(plant, shownId), row)) return shownId;
  const spanId = spanOf(plant, ref);
  return spanId === null ? null : (cablesInSpan(plant, spanId)[0] ?? null);
}

function spanOf(plant: Plant, ref: RefKey): string | null {
  const { table, id } = splitRef(ref);
  if (!plant.row(table, id)) return null;
  switch (table) {
    case "span":
      return id;
    case "crossing":
    case "terminal":
    case "slack":
    case "closure":
      return plant.rowOf(table, id).spanId;
    case "pole":
      return plant.where("span", "fromPoleId", id)[0] ?? plant.where("span", "toPoleId", id)[0] ?? null;
    default:
      return null;
  }
}

import { bareStrandSteps } from "../../core/plant/bareStrand.ts";
import { cablePath, cablesInSpan } from "../../core/plant/cablePath.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { type Profile, type ProfileWay, profileAlong } from "../../core/plant/profile.ts";
import { placeOnProfile } from "../../core/plant/profilePlace.ts";
import { type RefKey, refKey, splitRef } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { openRouteOf, type Session } from "../app/session.ts";
import { profileWords } from "./words.ts";

/** A cable or a strand section whose line is shown from the side. */
type Way = { readonly ref: RefKey; readonly name: string };

/** The way that is shown: the one asked for, else the first there is; null where there is none. */
function shownWay(open: OpenRoute, wanted: RefKey | null): ProfileWay | null {
  const asked = wanted === null ? null : wayOf(wanted);
  if (asked && open.plant.row(asked.table, asked.id)) return asked;
  const [first] = profileWays(open);
  return first ? wayOf(first.ref) : null;
}

function wayOf(ref: RefKey): ProfileWay | null {
  const { table, id } = splitRef(ref);
  return table === "cable" || table === "strandSection" ? { table, id } : null;
}

/** Ways a profile can be drawn along: cables from the hub before those spliced on, by name, then strand without a cable. */
export function profileWays({ route, plant }: Pick<OpenRoute, "route" | "plant">): readonly Way[] {
  const byName = (a: { readonly name: string }, b: { readonly name: string }): number =>
    a.name.localeCompare(b.name, undefined, { numeric: true });
  const cables = [...route.cable.values()]
    .filter(({ id }) => cablePath(plant, id).steps.length > 0)
    .sort((a, b) => Number(a.fromClosureId !== null) - Number(b.fromClosureId !== null) || byName(a, b));
  const sections = [...route.strandSection.values()]
    .filter(({ id }) => bareStrandSteps(plant, id).length > 0)
    .sort(byName);
  return [
    ...cables.map(({ id, name }) => ({ ref: refKey("cable", id), name })),
    ...sections.map(({ id, name }) => ({ ref: refKey("strandSection", id), name: profileWords.bareStrand(name) })),
  ];
}

/** The profile along the way that is shown; null where there is none. */
export function shownProfile(open: OpenRoute, wanted: RefKey | null): Profile | null {
  const way = shownWay(open, wanted);
  return way && profileAlong(open.plant, way);
}

/** The profile of a session; null where there is none. */
export function profileNow(session: Session): Profile | null {
  return shownProfile(openRouteOf(session), session.view.getState().profile.way);
}

/** A way that passes a row, the shown one where it does; null where none does. */
export function wayPassing(plant: Plant, ref: RefKey, shown: ProfileWay): ProfileWay | null {
  if (placeOnProfile(plant, profileAlong(plant, shown), splitRef(ref))) return shown;
  const spanId = spanOf(plant, ref);
  if (spanId === null) return null;
  const [cableId] = cablesInSpan(plant, spanId);
  if (cableId !== undefined) return { table: "cable", id: cableId };
  const { strandSectionId } = plant.rowOf("span", spanId);
  return strandSectionId === null ? null : { table: "strandSection", id: strandSectionId };
}

function spanOf(plant: Plant, ref: RefKey): string | null {
  const { table, id } = splitRef(ref);
  if (!plant.row(table, id)) return null;
  switch (table) {
    case "span":
      return id;
    case "crossing":
    case "structure":
    case "groundPoint":
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

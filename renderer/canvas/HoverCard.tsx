import type { Plant } from "../../core/plant/plant.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { useView } from "../app/useSession.ts";
import { hintOf, titleOf } from "../panels/words.ts";

/** What is under the pointer, told in the corner of the diagram so that it never covers what it describes. */
export function HoverCard({ plant, units }: { readonly plant: Plant; readonly units: UnitSystem }) {
  const hover = useView((state) => state.hover);
  if (!hover) return null;
  return (
    <div className="hover-card" aria-hidden="true">
      <strong>{titleOf(plant, hover)}</strong>
      <span>{hintOf(plant, hover, units)}</span>
    </div>
  );
}

import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { structureWords } from "../../panels/words.ts";
import type { AddingForm } from "./addingState.ts";
import { words } from "./words.ts";

/** One field of a form: how `Typed` names it, what it is called, and its choices where it has some. */
type FormField = {
  readonly name: string;
  readonly label: string;
  readonly choices?: Readonly<Record<string, string>>;
};

const forceUnit = { us: "lbf", metric: "N" } as const satisfies Record<UnitSystem, string>;

/** The few fields a click leaves open. */
export function fieldsOf(form: AddingForm, { route, plant }: OpenRoute, units: UnitSystem): readonly FormField[] {
  switch (form.kind) {
    case "crossing":
      return [
        { name: "surface", label: words.surface, choices: words.surfaces },
        { name: "name", label: words.name },
        { name: "width", label: words.width },
      ];
    case "structure": {
      const { fromPoleId, toPoleId } = plant.rowOf("span", form.spanId);
      const [from, to] = [fromPoleId, toPoleId].map((id) => plant.rowOf("pole", id).tag);
      return [
        { name: "kind", label: words.what, choices: structureWords },
        { name: "name", label: words.name },
        { name: "along", label: words.along },
        { name: "beside", label: words.beside },
        {
          name: "side",
          label: words.side,
          choices: { left: words.leftOf(from ?? "", to ?? ""), right: words.rightOf(from ?? "", to ?? "") },
        },
        { name: "top", label: words.top },
        { name: "bottom", label: words.bottom },
      ];
    }
    case "groundPoint":
      return [{ name: "elevation", label: words.elevation }];
    case "guy":
      return [
        {
          name: "strand",
          label: words.strand,
          choices: Object.fromEntries([...route.strandType.values()].map(({ id, name }) => [id, name])),
        },
        { name: "height", label: words.height },
        { name: "lead", label: words.lead },
        { name: "anchor", label: `${words.anchorHolds}, ${forceUnit[units]}` },
      ];
    case "attachment":
      return [
        { name: "owner", label: words.owner },
        { name: "kind", label: words.kind, choices: words.kinds },
        { name: "height", label: words.height },
        { name: "bonded", label: words.bonded, choices: words.bondedChoices },
      ];
    case "unit":
      return [{ name: "address", label: words.address }];
    case "reach":
      return [{ name: "length", label: words.spanLength }];
  }
}

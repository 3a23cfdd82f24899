import { sheathLength } from "../../../core/plant/cablePath.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { refKey } from "../../app/ref.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { unitsOf } from "../../app/session.ts";
import { Figure } from "../../explain/Figure.tsx";
import { EmptyState } from "../EmptyState.tsx";
import { Facts } from "../Facts.tsx";
import { RefButton } from "../RefButton.tsx";
import { emptyWords } from "../words.ts";
import { routeWords as words } from "./words.ts";

/** The route as a whole: what one reads when nothing is chosen. */
export function RouteTold({ open }: { readonly open: OpenRoute }) {
  const { route, plant, fileName } = open;
  const settings = plant.settings();
  const units = unitsOf(open);
  const strandM = [...route.span.values()].reduce(
    (sum, one) => sum + (one.strandSectionId === null ? 0 : one.lengthM),
    0,
  );
  const sheathM = [...route.cable.keys()].reduce((sum, id) => sum + sheathLength(plant, id).totalM, 0);
  const portCount = [...route.terminal.values()].reduce(
    (sum, one) => sum + plant.rowOf("terminalModel", one.terminalModelId).portCount,
    0,
  );
  const servedCount = new Set([...route.drop.values()].map((one) => one.livingUnitId)).size;
  return (
    <>
      <h2>{settings.routeName}</h2>
      <p className="place">{[settings.place, settings.county].filter(Boolean).join(", ")}</p>
      <Facts
        facts={[
          [words.project, settings.project],
          [words.company, settings.company],
          [words.file, fileName],
          [words.poles, route.pole.size],
          [words.strand, formatLength(strandM, units, "span")],
          [words.sheath, formatLength(sheathM, units, "span")],
          [words.terminals, route.terminal.size],
          [words.ports, words.portCounts(portCount, portCount - route.drop.size)],
          [words.units, words.unitCounts(route.livingUnit.size, servedCount)],
        ]}
      />
      {route.cable.size > 0 && <h3>{words.cables}</h3>}
      <ul className="lines">
        {[...route.cable.values()].map((one) => (
          <li key={one.id}>
            <RefButton to={refKey("cable", one.id)}>{one.name}</RefButton>
            <Figure of={{ figure: "sheath", id: one.id }}>
              {formatLength(sheathLength(plant, one.id).totalM, units, "span")}
            </Figure>
          </li>
        ))}
      </ul>
      {route.pole.size === 0 && route.livingUnit.size === 0 ? (
        <EmptyState says={emptyWords.side} actionIds={["import"]} />
      ) : (
        <p className="quiet">{words.chooseOne}</p>
      )}
    </>
  );
}

import { useMemo } from "react";
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
  const { strandM, sheathM, portCount, reservedCount, servedCount } = useTotals(open);
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
          [words.ports, words.portCounts(portCount, reservedCount, portCount - reservedCount - route.drop.size)],
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

/** Sums over the whole route; each is made anew only when a table it is made of has changed. */
function useTotals({ route, plant }: OpenRoute) {
  const { span, terminal, terminalModel, drop } = route;
  const strandM = useMemo(() => {
    const strung = [...span.values()].filter((one) => one.strandSectionId !== null);
    return strung.reduce((sum, one) => sum + one.lengthM, 0);
  }, [span]);
  const portCount = useMemo(() => {
    const counts = [...terminal.values()].map((one) => terminalModel.get(one.terminalModelId)?.portCount ?? 0);
    return counts.reduce((sum, one) => sum + one, 0);
  }, [terminal, terminalModel]);
  const reservedCount = useMemo(
    () => [...terminal.values()].reduce((sum, one) => sum + one.reservedPortCount, 0),
    [terminal],
  );
  const servedCount = useMemo(() => new Set([...drop.values()].map((one) => one.livingUnitId)).size, [drop]);
  const sheathM = [...route.cable.keys()].reduce((sum, id) => sum + sheathLength(plant, id).totalM, 0);
  return { strandM, sheathM, portCount, reservedCount, servedCount };
}

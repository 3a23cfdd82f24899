import { useVirtualizer } from "@tanstack/react-virtual";
import { type KeyboardEvent, useEffect, useMemo, useRef } from "react";
import { terminalsFromHub } from "../../core/layout/terminalOrder.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { terminalLight } from "../../core/plant/terminalLight.ts";
import { terminalPlace } from "../../core/plant/terminalView.ts";
import { formatLossDb } from "../../core/units/formatLossDb.ts";
import { formatStation } from "../../core/units/station.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { chooseAndShow } from "../app/look.ts";
import { type RefKey, refKey, splitRef } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { GridPart } from "../tables/GridPart.tsx";
import { LightChip } from "./LightChip.tsx";
import { LightSheet } from "./LightSheet.tsx";
import { terminalBand } from "./lightBand.ts";
import { useReckonedLight } from "./useReckonedLight.ts";
import { lightWords as words } from "./words.ts";

const rowPx = 28;

/** The light of every terminal at its worst, from the hub out; beside it the chosen terminal port by port. */
export function LightRoute({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const { plant } = open;
  const selection = useView((state) => state.selection);
  const cables = terminalsFromHub(plant);
  const ids = useMemo(() => cables.flatMap((one) => one.terminalIds), [cables]);
  const reckonedFrac = useReckonedLight(open, ids);
  const chosenId = terminalOf(plant, selection) ?? ids[0] ?? null;
  const at = chosenId === null ? -1 : ids.indexOf(chosenId);
  const area = useRef<HTMLDivElement>(null);
  // oxlint-disable-next-line react/incompatible-library -- no compiler memoises this window, and nothing below is memoised by hand
  const virtual = useVirtualizer({
    count: ids.length,
    getScrollElement: () => area.current,
    estimateSize: () => rowPx,
    overscan: 8,
    useFlushSync: false,
  });
  useEffect(() => {
    if (at >= 0) virtual.scrollToIndex(at, { align: "auto" });
  }, [at, virtual]);
  const choose = (id: string | undefined): void => {
    if (id !== undefined) chooseAndShow(session, [refKey("terminal", id)]);
  };
  const press = (event: KeyboardEvent): void => {
    const last = ids.length - 1;
    const steps: Readonly<Record<string, number>> = {
      ArrowDown: Math.min(last, at + 1),
      ArrowUp: Math.max(0, at - 1),
      Home: 0,
      End: last,
      PageDown: Math.min(last, at + 8),
      PageUp: Math.max(0, at - 8),
    };
    const next = steps[event.key];
    if (next === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    choose(ids[next]);
  };
  if (chosenId === null) return null;
  const items = virtual.getVirtualItems();
  return (
    <div className="light-route">
      <div className="light-side">
        <p className="light-row light-head" aria-hidden="true">
          {words.listHeads.map((one) => (
            <span key={one}>{one}</span>
          ))}
        </p>
        {reckonedFrac < 1 && <progress className="light-progress" value={reckonedFrac} aria-label={words.reckoning} />}
        <GridPart
          ref={area}
          role="listbox"
          className="light-list"
          tabIndex={0}
          aria-label={words.list}
          aria-busy={reckonedFrac < 1}
          aria-activedescendant={items.some((one) => one.index === at) ? `light-${chosenId}` : undefined}
          onKeyDown={press}
        >
          <GridPart role="none" style={{ height: virtual.getTotalSize(), position: "relative" }}>
            {items.map(({ index, start }) => {
              const id = ids[index];
              if (id === undefined) return null;
              return (
                <GridPart
                  key={id}
                  id={`light-${id}`}
                  role="option"
                  aria-selected={id === chosenId}
                  aria-setsize={ids.length}
                  aria-posinset={index + 1}
                  className="light-row"
                  style={{ transform: `translateY(${start}px)` }}
                  onClick={() => choose(id)}
                >
                  <Terminal plant={plant} id={id} units={unitsOf(open)} />
                </GridPart>
              );
            })}
          </GridPart>
        </GridPart>
      </div>
      <LightSheet open={open} terminalId={chosenId} />
    </div>
  );
}

function Terminal({ plant, id, units }: { readonly plant: Plant; readonly id: string; readonly units: UnitSystem }) {
  const light = terminalLight(plant, id);
  const { stationM } = terminalPlace(plant, id);
  const band = terminalBand(light);
  return (
    <>
      <b>{plant.rowOf("terminal", id).name}</b>
      <span className="figure quiet">{stationM === null ? "" : formatStation(stationM, units)}</span>
      <span>
        {band === null || !light.worst ? (
          <span className="quiet">{band === "dark" ? words.dark(light.darkCount) : words.nobody}</span>
        ) : (
          <>
            <LightChip band={band} />
            {words.margin(formatLossDb(light.worst.marginDb), light.worst.way)}
            {light.darkCount > 0 && `, ${words.dark(light.darkCount)}`}
          </>
        )}
      </span>
      <span className="figure quiet">
        {light.overloadDb !== null && (
          <>
            {formatLossDb(light.overloadDb)} <span className="only-heard">{words.overLeast}</span>
          </>
        )}
      </span>
    </>
  );
}

/** The terminal of what is chosen last: itself, or the one that serves a chosen living unit. */
function terminalOf(plant: Plant, selection: readonly RefKey[]): string | null {
  for (const { table, id } of selection.toReversed().map(splitRef)) {
    if (table === "terminal" && plant.row(table, id)) return id;
    const [dropId] = table === "livingUnit" ? plant.where("drop", "livingUnitId", id) : [];
    if (dropId !== undefined) return plant.rowOf("drop", dropId).terminalId;
  }
  return null;
}

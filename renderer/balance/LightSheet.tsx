import type { PowerRange } from "../../core/fiber/lightBudget.ts";
import { lightMargin } from "../../core/plant/lightMargin.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { arrivingPower, type PortReading, portReading, rangeOf } from "../../core/plant/portReading.ts";
import { type PortView, portsOf } from "../../core/plant/terminalView.ts";
import { fixedText } from "../../core/units/fixedText.ts";
import { formatLossDb } from "../../core/units/formatLossDb.ts";
import { refKey } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { Figure } from "../explain/Figure.tsx";
import { RefButton } from "../panels/RefButton.tsx";
import { LightChip } from "./LightChip.tsx";
import { dropBand } from "./lightBand.ts";
import { lightWords as words } from "./words.ts";

/** One terminal's light: what a meter is expected to show at every port, and what is left at every unit. */
export function LightSheet({ open, terminalId }: { readonly open: OpenRoute; readonly terminalId: string }) {
  const { plant } = open;
  const { name } = plant.rowOf("terminal", terminalId);
  const ports = portsOf(plant, terminalId).map((view) => ({
    view,
    reading: portReading(plant, terminalId, view.port),
  }));
  const known = ports.map((one) => one.reading).find((one) => one.kind === "known");
  return (
    <section className="light-sheet" aria-label={words.sheet(name)}>
      <h3>{words.sheet(name)}</h3>
      {known && <ClassWords plant={plant} opticalClassId={known.opticalClassId} />}
      <table>
        <thead>
          <Headings plant={plant} opticalClassId={known?.opticalClassId ?? null} />
        </thead>
        <tbody>
          {ports.map(({ view, reading }) => (
            <Port key={view.port} plant={plant} view={view} reading={reading} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

type ClassProps = { readonly plant: Plant; readonly opticalClassId: string };

function ClassWords({ plant, opticalClassId }: ClassProps) {
  const opticalClass = plant.rowOf("opticalClass", opticalClassId);
  const needs = rangeOf(opticalClass, "unitReceive");
  const hub = rangeOf(opticalClass, "hubReceive");
  const { system, name, minLossDb, maxLossDb, basisDocument, basisMark } = opticalClass;
  return (
    <p className="quiet">
      {words.classOf(`${system} ${name}`, minLossDb, maxLossDb)}
      {needs && `; ${words.unitNeeds(rangeText(needs))}`}
      {hub && `; ${words.hubNeeds(rangeText(hub))}`}
      {`. ${basisDocument} (${basisMark}).`}
    </p>
  );
}

function Headings({ plant, opticalClassId }: { readonly plant: Plant; readonly opticalClassId: string | null }) {
  const { upNm, downNm } = opticalClassId === null ? noWaves : plant.rowOf("opticalClass", opticalClassId);
  const heads = [words.loss(downNm), words.loss(upNm), words.power(downNm), words.atUnit(downNm), words.atHub(upNm)];
  return (
    <>
      <tr>
        <td colSpan={2} />
        <th scope="colgroup" colSpan={3}>
          {words.atPort}
        </th>
        <th scope="colgroup" colSpan={3}>
          {words.inService}
        </th>
      </tr>
      <tr>
        <th scope="col" className="figure">
          {words.port}
        </th>
        <th scope="col">{words.unit}</th>
        {heads.map((one) => (
          <th key={one} scope="col" className="figure">
            {one}
          </th>
        ))}
        <th scope="col">{words.marginHead}</th>
      </tr>
    </>
  );
}

const noWaves = { upNm: 0, downNm: 0 };

type PortProps = { readonly plant: Plant; readonly view: PortView; readonly reading: PortReading };

function Port({ plant, view, reading }: PortProps) {
  const [dropId] = view.dropIds;
  const unit = dropId === undefined ? null : plant.rowOf("livingUnit", plant.rowOf("drop", dropId).livingUnitId);
  const power = dropId === undefined ? null : arrivingPower(plant, dropId);
  return (
    <tr>
      <td className="figure">{view.port}</td>
      <td>
        {unit ? (
          <RefButton to={refKey("livingUnit", unit.id)}>{unit.address}</RefButton>
        ) : (
          <span className="quiet">{view.isReserved ? words.reserved : words.spare}</span>
        )}
      </td>
      {reading.kind === "unknown" ? (
        <td colSpan={3}>{reading.why}</td>
      ) : (
        <>
          <td className="figure">{lossText(reading.least.downDb, reading.most.downDb)}</td>
          <td className="figure">{lossText(reading.least.upDb, reading.most.upDb)}</td>
          <td className="figure">{reading.arrives ? rangeText(reading.arrives) : words.notKnown}</td>
        </>
      )}
      <td className="figure">{power && (power.atUnit ? rangeText(power.atUnit) : words.notKnown)}</td>
      <td className="figure">{power && (power.atHub ? rangeText(power.atHub) : words.notKnown)}</td>
      <td>{dropId !== undefined && <Margin plant={plant} dropId={dropId} />}</td>
    </tr>
  );
}

function Margin({ plant, dropId }: { readonly plant: Plant; readonly dropId: string }) {
  const margin = lightMargin(plant, dropId);
  const band = dropBand(margin);
  if (margin.kind === "unknown") return words.noLight;
  return (
    <>
      <LightChip band={band} />
      <Figure of={{ figure: margin.way === "up" ? "lightUp" : "lightDown", id: dropId }}>
        {band === "overload"
          ? words.overload(formatLossDb(-margin.overloadDb))
          : words.margin(formatLossDb(margin.worstDb), margin.way)}
      </Figure>
    </>
  );
}

function lossText(leastDb: number, mostDb: number): string {
  return words.range(fixedText(leastDb, 1), fixedText(mostDb, 1));
}

function rangeText({ leastDbm, mostDbm }: PowerRange): string {
  return words.range(fixedText(leastDbm, 1), fixedText(mostDbm, 1));
}

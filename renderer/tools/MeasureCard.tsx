import type { Plant } from "../../core/plant/plant.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { tell } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { legsOf, type MeasurePoint } from "./measure.ts";
import { toolWords } from "./words.ts";

/** What the measure tool has found: each leg straight and along the strand, its bearing, and the running total. */
export function MeasureCard({ plant, units }: { readonly plant: Plant; readonly units: UnitSystem }) {
  const session = useSession();
  const points = useView((state) => state.measure);
  if (!points) return null;
  const rows = measuredRows(plant, points, units);
  const copy = async (): Promise<void> => {
    await navigator.clipboard.writeText(rows.map((row) => row.join("\t")).join("\n"));
    tell(session, toolWords.copied);
  };
  return (
    <section className="tool-card" aria-label={toolWords.measure}>
      <header>
        <h2>{toolWords.measure}</h2>
        <button type="button" className="act" onClick={() => session.view.setState({ measure: [] })}>
          {toolWords.startAgain}
        </button>
        <button type="button" className="act" onClick={() => void copy()}>
          {toolWords.copy}
        </button>
        <button type="button" className="act" onClick={() => session.view.setState({ measure: null })}>
          {toolWords.close}
        </button>
      </header>
      {points.length < 2 && <p>{toolWords.measureHint}</p>}
      {points.length >= 2 && (
        <table>
          <thead>
            <tr>
              <th scope="col">{toolWords.leg}</th>
              <th scope="col" className="figure">
                {toolWords.straight}
              </th>
              <th scope="col" className="figure">
                {toolWords.alongStrand}
              </th>
              <th scope="col" className="figure">
                {toolWords.bearing}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map(([leg, ...figures], i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: legs are only ever added at the end
              <tr key={i}>
                <th scope="row">{leg}</th>
                {figures.map((figure, column) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: three fixed columns
                  <td key={column} className="figure">
                    {figure}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

/** Lines of the card as text: leg, straight, along the strand, bearing; the total last. */
function measuredRows(
  plant: Plant,
  points: readonly MeasurePoint[],
  units: UnitSystem,
): readonly (readonly string[])[] {
  const legs = legsOf(plant, points);
  const length = (valueM: number): string => formatLength(valueM, units, "height");
  const rows = legs.map(({ straightM, alongM, bearingRad }, i) => [
    `${points[i]?.words ?? ""} – ${points[i + 1]?.words ?? ""}`,
    length(straightM),
    alongM === null ? "–" : length(alongM),
    `${((bearingRad * 180) / Math.PI).toFixed(1)}°`,
  ]);
  const isWhole = legs.every((leg) => leg.alongM !== null);
  const total = [
    toolWords.total,
    length(legs.reduce((sum, leg) => sum + leg.straightM, 0)),
    isWhole ? length(legs.reduce((sum, leg) => sum + (leg.alongM ?? 0), 0)) : "–",
    "",
  ];
  return legs.length === 0 ? [] : [...rows, total];
}

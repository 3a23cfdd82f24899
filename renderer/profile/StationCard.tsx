import type { Plant } from "../../core/plant/plant.ts";
import type { Profile } from "../../core/plant/profile.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { overWords, stationTold } from "./stationWords.ts";
import { caseWords, profileWords } from "./words.ts";

type Props = {
  readonly plant: Plant;
  readonly profile: Profile;
  readonly stationM: number;
  readonly units: UnitSystem;
};

/** Height and clearance of the line at a station in each case, against what the clearance set asks for. */
export function StationCard({ plant, profile, stationM, units }: Props) {
  const told = stationTold(plant, profile, stationM, units);
  if (!told) return null;
  const { clearance } = told;
  return (
    <div className="profile-card" data-card="station">
      <strong>{told.title}</strong>
      <span>{told.place}</span>
      {clearance.kind === "unknown" ? (
        <p>{clearance.why}</p>
      ) : (
        <table>
          <thead>
            <tr>
              <th scope="col">{profileWords.condition}</th>
              {clearance.over && <th scope="col">{profileWords.aboveGround}</th>}
              <th scope="col">{profileWords.over(overWords(plant, clearance))}</th>
              <th scope="col">{profileWords.limit}</th>
            </tr>
          </thead>
          <tbody>
            {clearance.byCase.map(({ condition, aboveGroundM, clearanceM, limitM }) => {
              const isShort = limitM !== null && clearanceM < limitM;
              return (
                <tr key={condition} className={isShort ? "is-short" : undefined}>
                  <th scope="row">{caseWords[condition]}</th>
                  {clearance.over && <td>{formatLength(aboveGroundM, units, "clearance")}</td>}
                  <td>{`${isShort ? "◆ " : ""}${formatLength(clearanceM, units, "clearance")}`}</td>
                  <td>{limitM === null ? profileWords.noLimit : formatLength(limitM, units, "height")}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      )}
    </div>
  );
}

import { farPoleId, spansAtPole } from "../../../core/plant/geometry.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { refKey } from "../../app/ref.ts";
import { Facts } from "../Facts.tsx";
import { RefButton } from "../RefButton.tsx";
import type { Told } from "./told.ts";

const kindWords = {
  ourStrand: "our strand",
  communication: "communication",
  neutral: "neutral",
  secondary: "secondary",
  primary: "primary",
  equipment: "equipment",
  streetLight: "street light",
  riser: "riser",
} as const;

/** A pole: what it is, who hangs on it at what height, where its spans go. */
export function PoleTold({ plant, id, units }: Told) {
  const pole = plant.rowOf("pole", id);
  const attachments = plant
    .where("attachment", "poleId", id)
    .map((one) => plant.rowOf("attachment", one))
    .sort((a, b) => b.heightM - a.heightM);
  const spans = spansAtPole(plant, id).map((spanId) => plant.rowOf("span", spanId));
  return (
    <>
      <Facts
        facts={[
          [
            "Height above ground",
            pole.aboveGroundM === null ? "not known" : formatLength(pole.aboveGroundM, units, "height"),
          ],
          ["Class", pole.poleClass],
          ["Owner", pole.owner],
          ["Ground elevation", pole.groundM === null ? "not measured" : formatLength(pole.groundM, units, "height")],
          ["Line", pole.line === "" ? null : `${pole.line}${pole.order > 0 ? `, number ${pole.order}` : ""}`],
          ["Terminal beside it", pole.terminalAllowed ? null : "not allowed"],
          ["Note", pole.note],
        ]}
      />
      <h3>Attachments</h3>
      {attachments.length === 0 ? (
        <p className="quiet">No heights are recorded on this pole.</p>
      ) : (
        <table>
          <thead>
            <tr>
              <th scope="col" className="figure">
                Height
              </th>
              <th scope="col">What</th>
              <th scope="col">Owner</th>
            </tr>
          </thead>
          <tbody>
            {attachments.map((one) => (
              <tr key={one.id}>
                <td className="figure">{formatLength(one.heightM, units, "height")}</td>
                <td>
                  {kindWords[one.kind]}
                  {one.voltageV > 0 && <span className="quiet"> {one.voltageV.toLocaleString("en")} V</span>}
                </td>
                <td>{one.owner}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <h3>Spans</h3>
      <ul className="lines">
        {spans.map((span) => (
          <li key={span.id}>
            <RefButton to={refKey("span", span.id)}>
              {`to ${plant.rowOf("pole", farPoleId(plant, span.id, id)).tag}`}
            </RefButton>
            <span className="figure">{formatLength(span.lengthM, units, "span")}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

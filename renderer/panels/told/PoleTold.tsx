import { windyCases } from "../../../core/model/loadRows.ts";
import { farPoleId, spansAtPole } from "../../../core/plant/geometry.ts";
import { lineOnPole } from "../../../core/plant/poleLoad.ts";
import { poleSeparation } from "../../../core/plant/separation.ts";
import { catalogueBasis, isUnverified } from "../../../core/rules/rule.ts";
import { fixedText } from "../../../core/units/fixedText.ts";
import { formatForce } from "../../../core/units/formatForce.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { refKey } from "../../app/ref.ts";
import { Figure } from "../../explain/Figure.tsx";
import { RefButton } from "../RefButton.tsx";
import { attachmentWords, conditionWords } from "../words.ts";
import { RangeTold } from "./RangeTold.tsx";
import type { Told } from "./told.ts";
import { poleWords as words } from "./words.ts";

/** A pole: who hangs on it at what height, where its spans go. */
export function PoleTold({ plant, id, units }: Told) {
  const attachments = plant
    .where("attachment", "poleId", id)
    .map((one) => plant.rowOf("attachment", one))
    .sort((a, b) => b.heightM - a.heightM);
  const spans = spansAtPole(plant, id).map((spanId) => plant.rowOf("span", spanId));
  return (
    <>
      <h3>{words.attachments}</h3>
      {attachments.length === 0 ? (
        <p className="quiet">{words.noHeights}</p>
      ) : (
        <table>
          <thead>
            <tr>
              <th scope="col" className="figure">
                {words.height}
              </th>
              <th scope="col">{words.what}</th>
              <th scope="col" className="figure">
                {words.aboveOurs}
              </th>
            </tr>
          </thead>
          <tbody>
            {attachments.map((one) => (
              <tr key={one.id}>
                <td className="figure">{formatLength(one.heightM, units, "height")}</td>
                <td>
                  <RefButton to={refKey("attachment", one.id)}>{attachmentWords[one.kind]}</RefButton>
                  {one.voltageV > 0 && <span className="quiet"> {one.voltageV.toLocaleString("en")} V</span>}
                  <div className="quiet">{one.owner}</div>
                </td>
                <td className="figure">
                  <Above plant={plant} id={one.id} units={units} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <RangeTold plant={plant} id={id} units={units} />
      <LineLoad plant={plant} id={id} units={units} />
      <h3>{words.spans}</h3>
      <ul className="lines">
        {spans.map((span) => (
          <li key={span.id}>
            <RefButton to={refKey("span", span.id)}>
              {words.spanTo(plant.rowOf("pole", farPoleId(plant, span.id, id)).tag)}
            </RefButton>
            <span className="figure">{formatLength(span.lengthM, units, "span")}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

/** What our line adds to the load of the pole in each case with wind, for whoever answers for the pole. */
function LineLoad({ plant, id, units }: Told) {
  const set = plant.rowOf("strengthSet", plant.settings().strengthSetId);
  const cases = windyCases.flatMap((condition) => {
    const line = lineOnPole(plant, id, condition);
    return line ? [{ condition, line }] : [];
  });
  if (cases.length === 0) return null;
  const force = (valueN: number, factor: number) => `${formatForce(valueN, units)} (× ${fixedText(factor, 2)})`;
  return (
    <>
      <h3>{words.lineLoad(set.name, isUnverified(catalogueBasis(set)))}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.inCase}</th>
            <th scope="col" className="figure">
              {words.down}
            </th>
            <th scope="col" className="figure">
              {words.across}
            </th>
          </tr>
        </thead>
        <tbody>
          {cases.map(({ condition, line }) => (
            <tr key={condition}>
              <td>{conditionWords[condition]}</td>
              <td className="figure">{force(line.downN, line.vertical.factor)}</td>
              <td className="figure">{force(line.acrossN, line.wind.factor)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function Above({ plant, id, units }: Told) {
  const separation = poleSeparation(plant, id);
  if (separation === null) return null;
  return <Figure of={{ figure: "poleSeparation", id }}>{formatLength(separation.aboveM, units, "clearance")}</Figure>;
}

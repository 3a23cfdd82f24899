import { windyCases } from "../../../core/model/loadRows.ts";
import { cablesInSpan } from "../../../core/plant/cablePath.ts";
import { spanSeparations } from "../../../core/plant/separation.ts";
import { spanSag } from "../../../core/plant/spanSag.ts";
import { chosenCases, governingCase, stateIn } from "../../../core/plant/strength.ts";
import { fixedText } from "../../../core/units/fixedText.ts";
import { formatForce } from "../../../core/units/formatForce.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { formatTemperature } from "../../../core/units/formatTemperature.ts";
import { formatWeightPerLength } from "../../../core/units/formatWeightPerLength.ts";
import { refKey } from "../../app/ref.ts";
import { Figure } from "../../explain/Figure.tsx";
import { type Fact, Facts } from "../Facts.tsx";
import { RefButton } from "../RefButton.tsx";
import { conditionWords, offsetWords, titleOf } from "../words.ts";
import type { Told } from "./told.ts";
import { spanWords as words } from "./words.ts";

/** A span: how long, what is strung, how it sags, what hangs in it and lies under it. */
export function SpanTold({ plant, id, units }: Told) {
  const span = plant.rowOf("span", id);
  const section = span.strandSectionId === null ? null : plant.rowOf("strandSection", span.strandSectionId);
  const cables = cablesInSpan(plant, id).map((one) => plant.rowOf("cable", one).name);
  const hung = (["terminal", "slack", "closure"] as const)
    .flatMap((table) => plant.where(table, "spanId", id).map((one) => ({ table, row: plant.rowOf(table, one) })))
    .sort((a, b) => a.row.offsetM - b.row.offsetM);
  const crossings = plant.where("crossing", "spanId", id);
  return (
    <>
      <Facts
        facts={[
          [words.strand, section ? plant.rowOf("strandType", section.strandTypeId).name : words.noStrand],
          [
            words.section,
            section && (
              <RefButton key="section" to={refKey("strandSection", section.id)}>
                {section.name}
              </RefButton>
            ),
          ],
          [words.cable(cables.length), cables.length === 0 ? words.noCable : cables.join(", ")],
        ]}
      />
      <Sag plant={plant} id={id} units={units} />
      {crossings.length > 0 && <h3>{words.crossings}</h3>}
      <ul className="lines">
        {crossings.map((one) => (
          <li key={one}>
            <RefButton to={refKey("crossing", one)}>{titleOf(plant, refKey("crossing", one))}</RefButton>
            <span className="figure">{formatLength(plant.rowOf("crossing", one).offsetM, units, "span")}</span>
          </li>
        ))}
      </ul>
      {hung.length > 0 && <h3>{words.hungFrom(plant.rowOf("pole", span.fromPoleId).tag)}</h3>}
      <ul className="lines">
        {hung.map(({ table, row }) => (
          <li key={row.id}>
            <RefButton to={refKey(table, row.id)}>{titleOf(plant, refKey(table, row.id))}</RefButton>
            <span className="figure">{offsetWords(row.offsetM, units)}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

function Sag({ plant, id, units }: Told) {
  const sag = spanSag(plant, id);
  if (sag.kind === "unknown") return <p className="quiet">{words.noSag(sag.why)}</p>;
  return (
    <>
      <h3>{words.sagAtMidspan}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.condition}</th>
            <th scope="col" className="figure">
              {words.at}
            </th>
            <th scope="col" className="figure">
              {words.tension}
            </th>
            <th scope="col" className="figure">
              {words.sag}
            </th>
          </tr>
        </thead>
        <tbody>
          {chosenCases(plant).map((name) => {
            const state = stateIn(plant, id, name);
            return (
              state && (
                <tr key={name}>
                  <td>{conditionWords[name]}</td>
                  <td className="figure">{formatTemperature(state.temperatureDegC, units)}</td>
                  <td className="figure">
                    <Figure of={{ figure: "tension", id, part: name }}>{formatForce(state.horizontalN, units)}</Figure>
                  </td>
                  <td className="figure">
                    <Figure of={{ figure: "sag", id, part: name }}>{formatLength(state.sagM, units, "sag")}</Figure>
                  </td>
                </tr>
              )
            );
          })}
        </tbody>
      </table>
      <Facts facts={[...loadFacts({ plant, id, units }), ...strengthFacts({ plant, id, units })]} />
      <Wires plant={plant} id={id} units={units} />
    </>
  );
}

/** What the line weighs in each wind it is checked in. */
function loadFacts({ plant, id, units }: Told): Fact[] {
  return windyCases.flatMap((part): Fact[] => {
    const state = stateIn(plant, id, part);
    if (!state) return [];
    const text = formatWeightPerLength(state.alongNPerM, units);
    return [
      [
        words.load[part],
        <Figure key={part} of={{ figure: "load", id, part }}>
          {text}
        </Figure>,
      ],
    ];
  });
}

/** The share of the breaking strength in the case that governs, against what the strength set allows. */
function strengthFacts({ plant, id }: Told): Fact[] {
  const governing = governingCase(plant, id);
  if (!governing) return [[words.governs, words.noStrengthLimit]];
  const { condition: part, tensionN, allowedN, limit } = governing;
  const percent = (frac: number): string => fixedText(frac * 100, 1);
  const share = percent((tensionN / allowedN) * limit.limitFrac);
  return [
    [words.governs, conditionWords[part]],
    [
      words.ofBreaking,
      <Figure key="share" of={{ figure: "tensionShare", id, part }}>
        {words.shareOf(share, percent(limit.limitFrac))}
      </Figure>,
    ],
  ];
}

function Wires({ plant, id, units }: Told) {
  const separations = spanSeparations(plant, id);
  if (separations.kind === "unknown" || separations.wires.length === 0) return null;
  return (
    <>
      <h3>{words.separation}</h3>
      <ul className="lines">
        {separations.wires.map(({ fromAttachmentId, party, leastM }) => (
          <li key={fromAttachmentId}>
            <RefButton to={refKey("attachment", fromAttachmentId)}>
              {words.wire(party, plant.rowOf("attachment", fromAttachmentId).owner)}
            </RefButton>
            <Figure of={{ figure: "spanSeparation", id, wireId: fromAttachmentId }}>
              {formatLength(leastM, units, "clearance")}
            </Figure>
          </li>
        ))}
      </ul>
    </>
  );
}

import { builtPlant } from "../../../core/closeout/builtPlant.ts";
import { basisWords } from "../../../core/explain/basisWords.ts";
import { explain } from "../../../core/explain/explain.ts";
import { figureOfFinding } from "../../../core/explain/figureOfFinding.ts";
import { putIn } from "../../../core/explain/putIn.ts";
import { repeatedFinding } from "../../../core/rules/asBuilt.ts";
import { findingFigures } from "../../../core/rules/findingFigures.ts";
import { ruleRegister } from "../../../core/rules/register.ts";
import type { OpenRoute, WindowFinding } from "../../app/routeStore.ts";
import { unitsOf } from "../../app/session.ts";
import { Figure } from "../../explain/Figure.tsx";
import { findingsWords } from "./words.ts";

/** What the rule of a finding is, where its limit comes from, and how the figure it compares was reckoned. */
export function FindingExplained({ finding, open }: { readonly finding: WindowFinding; readonly open: OpenRoute }) {
  const rule = ruleRegister.find((one) => one.id === finding.ruleId);
  const figures = findingFigures(finding, unitsOf(open));
  return (
    <div className="finding-explained">
      <p>
        <strong>{`${finding.title}.`}</strong> {rule?.compares}
      </p>
      <p>
        {findingsWords.severity[finding.severity]}{" "}
        {rule && findingsWords.asked(rule.each.replace(/([A-Z])/g, " $1").toLowerCase())}
      </p>
      <p>{`${findingsWords.basis}: ${basisWords(finding.basis)}.`}</p>
      {figures.length > 0 && <p>{`${findingsWords.figures}: ${figures.join(", ")}.`}</p>}
      <Reckoned finding={finding} open={open} />
    </div>
  );
}

/** The figure of the drawing can be looked into further; one as built stands here alone, for what it leads to would be the drawing's. */
function Reckoned({ finding, open }: { readonly finding: WindowFinding; readonly open: OpenRoute }) {
  const repeated = repeatedFinding(finding);
  const plant = repeated ? builtPlant(open.plant) : open.plant;
  const figure = figureOfFinding(plant, repeated ?? finding);
  const told = figure && explain(plant, figure, unitsOf(open));
  if (!figure || told?.kind !== "known") return null;
  return (
    <>
      <p>
        {`${findingsWords.reckoned}: ${told.words}`}{" "}
        {repeated ? <strong>{told.result.text}</strong> : <Figure of={figure}>{told.result.text}</Figure>}
      </p>
      <p className="formula">{`${told.result.symbol} = ${told.formula} = ${putIn(told)}`}</p>
    </>
  );
}

import { basisWords } from "../../core/explain/basisWords.ts";
import { explain } from "../../core/explain/explain.ts";
import type { Explanation } from "../../core/explain/explanation.ts";
import { inputBasis } from "../../core/explain/inputBasis.ts";
import { workedSteps } from "../../core/explain/workedSteps.ts";
import type { Plant } from "../../core/plant/plant.ts";
import type { Subject } from "../../core/rules/rule.ts";
import { Overlay } from "../app/Overlay.tsx";
import { refKey } from "../app/ref.ts";
import { unitsOf } from "../app/session.ts";
import { useOpenRoute, useSession, useView } from "../app/useSession.ts";
import { titleOf } from "../panels/words.ts";
import { WorksheetPaper } from "./WorksheetPaper.tsx";
import { explainWords } from "./words.ts";

/** One figure worked out on a sheet of its own: what goes in, formula, steps, result, limit and every source; to be printed. */
export function Worksheet() {
  const { view } = useSession();
  const of = useView((state) => state.worksheet);
  const open = useOpenRoute();
  if (!of || !open) return null;
  const told = explain(open.plant, of, unitsOf(open));
  const close = (): void => view.setState({ worksheet: null });
  return (
    <Overlay
      label={explainWords.worksheet}
      className="worksheet"
      onClose={close}
      onHelp={() => view.setState({ worksheet: null, helpPage: "numbers", helpSought: "" })}
    >
      <header>
        <h2>{told?.title ?? explainWords.worksheet}</h2>
        <button type="button" className="fix" onClick={() => window.print()}>
          {explainWords.print}
        </button>
        <button type="button" className="fix" onClick={close}>
          {explainWords.closeWorksheet}
        </button>
      </header>
      <div className="worksheet-screen">
        {told?.kind === "known" ? <Worked plant={open.plant} told={told} /> : <p>{told?.why ?? explainWords.gone}</p>}
      </div>
      <WorksheetPaper open={open} figure={of} />
    </Overlay>
  );
}

function Worked({ plant, told }: { readonly plant: Plant; readonly told: Explanation }) {
  const { routeName, project, company } = plant.settings();
  const { result, limit } = told;
  return (
    <>
      <p className="quiet">{[routeName, project, company].filter(Boolean).join(" · ")}</p>
      <p>{told.words}</p>
      <p className="formula">{`${result.symbol} = ${told.formula}`}</p>
      <Inputs plant={plant} told={told} />
      <Steps told={told} />
      <p className="explained-result">{`${result.symbol} = ${result.text}`}</p>
      {limit && <p>{`${limit.words}: ${limit.text}. ${basisWords(limit.basis)}.`}</p>}
      <p>{`${explainWords.source}: ${told.source}.`}</p>
      {told.assumed.map((one) => (
        <p key={one}>{one}</p>
      ))}
      <p className="quiet">{explainWords.caution}</p>
    </>
  );
}

function Inputs({ plant, told }: { readonly plant: Plant; readonly told: Explanation }) {
  return (
    <table>
      <caption>{explainWords.inputs}</caption>
      <thead>
        <tr>
          {explainWords.inputHeadings.map((one) => (
            <th key={one} scope="col">
              {one}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {told.inputs.map(({ symbol, name, value, unit, text, from }) => {
          const basis = inputBasis(plant, from);
          return (
            <tr key={symbol}>
              <th scope="row">{symbol}</th>
              <td>{name}</td>
              <td className="figure">{text}</td>
              <td className="figure">{`${siText(value)} ${unit}`}</td>
              <td>{from ? rowWords(plant, from) : ""}</td>
              <td>{basis ? basisWords(basis) : ""}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function Steps({ told }: { readonly told: Explanation }) {
  return (
    <table>
      <caption>{explainWords.steps}</caption>
      <tbody>
        {workedSteps(told).map(({ formula, numbers, value }) => (
          <tr key={formula}>
            <td className="formula">{formula}</td>
            <td className="formula">{`= ${numbers}`}</td>
            <td className="figure">{`= ${siText(value)}`}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The row an input is read from, a catalogue row by its name. */
function rowWords(plant: Plant, { table, id }: Subject): string {
  const title = titleOf(plant, refKey(table, id));
  const row = plant.row(table, id);
  return row && "name" in row && row.name !== "" && !title.includes(row.name) ? `${title} ${row.name}` : title;
}

function siText(value: number): string {
  return String(Number(value.toPrecision(6)));
}

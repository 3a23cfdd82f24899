import { basisWords } from "../../core/explain/basisWords.ts";
import { explain } from "../../core/explain/explain.ts";
import type { Explanation, FigureRef } from "../../core/explain/explanation.ts";
import { explanationText } from "../../core/explain/explanationText.ts";
import { figureText } from "../../core/explain/figureText.ts";
import { putIn } from "../../core/explain/putIn.ts";
import { refKey } from "../app/ref.ts";
import { tell, unitsOf } from "../app/session.ts";
import { useOpenRoute, useSession, useView } from "../app/useSession.ts";
import { CloseButton } from "../panels/CloseButton.tsx";
import { RefButton } from "../panels/RefButton.tsx";
import { explainWords } from "./words.ts";

/** Where a figure comes from, live: formula, numbers, the rows they are read from, the limit and its source. */
export function ExplanationCard({ of, onClose }: { readonly of: FigureRef; readonly onClose: () => void }) {
  const open = useOpenRoute();
  const told = open && explain(open.plant, of, unitsOf(open));
  if (told?.kind !== "known")
    return (
      <>
        <Heading title={told?.title ?? ""} onClose={onClose} />
        <p>{told?.why ?? explainWords.gone}</p>
      </>
    );
  return (
    <>
      <Heading title={told.title} onClose={onClose} />
      <p className="explained-result">{told.result.text}</p>
      <p>{told.words}</p>
      <p className="formula">{`${told.result.symbol} = ${told.formula}`}</p>
      <p className="quiet">{explainWords.numbersIn}</p>
      <p className="formula">{`${told.result.symbol} = ${putIn(told)} = ${Number(told.result.value.toPrecision(6))} ${told.result.unit}`}</p>
      <h3>{explainWords.inputs}</h3>
      <Inputs told={told} />
      {told.limit && (
        <p>
          {`${told.limit.words}: ${told.limit.text}.`} <span className="quiet">{basisWords(told.limit.basis)}</span>
        </p>
      )}
      <p className="quiet">{`${explainWords.source}: ${told.source}.`}</p>
      {told.assumed.map((one) => (
        <p key={one} className="quiet">
          {one}
        </p>
      ))}
      <Buttons of={of} told={told} onPinned={onClose} />
    </>
  );
}

function Heading({ title, onClose }: { readonly title: string; readonly onClose: () => void }) {
  return (
    <header>
      <h2>{title}</h2>
      <CloseButton name={explainWords.close} onPress={onClose} />
    </header>
  );
}

function Inputs({ told }: { readonly told: Explanation }) {
  return (
    <table>
      <tbody>
        {told.inputs.map(({ symbol, name, text, from }) => (
          <tr key={symbol}>
            <th scope="row">{symbol}</th>
            <td>{from ? <RefButton to={refKey(from.table, from.id)}>{name}</RefButton> : name}</td>
            <td className="figure">{text}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

type ButtonsProps = { readonly of: FigureRef; readonly told: Explanation; readonly onPinned: () => void };

function Buttons({ of, told, onPinned }: ButtonsProps) {
  const session = useSession();
  const pinned = useView((state) => state.pinned);
  const isPinned = pinned.some((one) => figureText(one) === figureText(of));
  const pin = (): void => {
    const others = pinned.filter((one) => figureText(one) !== figureText(of));
    session.view.setState({ pinned: isPinned ? others : [...others, of] });
    if (!isPinned) onPinned();
  };
  const openWorksheet = (): void => {
    session.view.setState({ worksheet: of });
    if (!isPinned) onPinned();
  };
  const copy = async (): Promise<void> => {
    await navigator.clipboard.writeText(explanationText(told));
    tell(session, explainWords.copied);
  };
  return (
    <footer>
      <button type="button" className="fix" onClick={pin}>
        {isPinned ? explainWords.pinned : explainWords.pin}
      </button>
      <button type="button" className="fix" onClick={() => void copy()}>
        {explainWords.copy}
      </button>
      <button type="button" className="fix" onClick={openWorksheet}>
        {explainWords.worksheet}
      </button>
    </footer>
  );
}

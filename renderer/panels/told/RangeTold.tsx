import { basisWords } from "../../../core/explain/basisWords.ts";
import { explainRange, type RangeExplanation } from "../../../core/explain/explainRange.ts";
import { Figure } from "../../explain/Figure.tsx";
import { ReadyPlans } from "./ReadyPlans.tsx";
import type { Told } from "./told.ts";
import { rangeWords } from "./words.ts";

/** The heights at which our strand satisfies everything on a pole, what bars the others, and what would make room. */
export function RangeTold({ plant, id, units }: Told) {
  const told = explainRange(plant, id, units);
  return (
    <section aria-label={rangeWords.title}>
      <h3>{rangeWords.title}</h3>
      {told.kind === "unknown" ? (
        <p className="quiet">{told.why}</p>
      ) : (
        <>
          <p className="range-free">{told.result}</p>
          <p>{told.present}</p>
          <ReadyPlans poleId={id} ready={told.makeReady} />
          <Bounds poleId={id} bounds={told.bounds} />
          {told.assumed.map((one) => (
            <p key={one} className="quiet">
              {one}
            </p>
          ))}
        </>
      )}
    </section>
  );
}

type BoundsProps = { readonly poleId: string; readonly bounds: RangeExplanation["bounds"] };

function Bounds({ poleId, bounds }: BoundsProps) {
  const deciding = bounds.filter((one) => one.setsAnEnd || one.ends.length === 0);
  const others = bounds.filter((one) => !deciding.includes(one));
  return (
    <>
      <BoundList poleId={poleId} bounds={deciding} isSourced />
      {others.length > 0 && (
        <details>
          <summary>{rangeWords.others(others.length)}</summary>
          <BoundList poleId={poleId} bounds={others} isSourced={false} />
        </details>
      )}
    </>
  );
}

type BoundListProps = BoundsProps & {
  /** Whether the source of each is shown; the explanation of each end tells it anyhow. */
  readonly isSourced: boolean;
};

function BoundList({ poleId, bounds, isSourced }: BoundListProps) {
  return (
    <ul className="bounds">
      {bounds.map(({ key, ends, reason, basis }) => (
        <li key={key}>
          {ends.map(({ end, text }, at) => (
            <span key={end}>
              {at > 0 && rangeWords.or}
              <Figure of={{ figure: "heightBound", id: poleId, bound: key, part: end }}>{text}</Figure>
            </span>
          ))}
          {ends.length === 0 && rangeWords.noHeight} {reason}{" "}
          {isSourced && <span className="quiet">{basisWords(basis)}</span>}
        </li>
      ))}
    </ul>
  );
}

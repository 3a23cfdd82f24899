import { figureText } from "../../core/explain/figureText.ts";
import { useSession, useView } from "../app/useSession.ts";
import { ExplanationCard } from "./ExplanationCard.tsx";
import { explainWords } from "./words.ts";

/** Explanations a person pinned; they follow every edit until they are put away. */
export function PinnedExplanations() {
  const { view } = useSession();
  const pinned = useView((state) => state.pinned);
  if (pinned.length === 0) return null;
  return (
    <section className="pinned" aria-label={explainWords.pinnedRegion}>
      {pinned.map((ref) => (
        <article key={figureText(ref)} className="explanation">
          <ExplanationCard
            of={ref}
            onClose={() => view.setState({ pinned: pinned.filter((one) => figureText(one) !== figureText(ref)) })}
          />
        </article>
      ))}
    </section>
  );
}

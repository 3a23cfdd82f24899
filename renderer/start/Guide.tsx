import { useSession, useView } from "../app/useSession.ts";
import { guideSteps, words } from "./words.ts";

/** The guided look: three short steps beside the diagram, in nobody's way. */
export function Guide() {
  const session = useSession();
  const at = useView((state) => state.guideStep);
  const step = at === null ? undefined : guideSteps[at];
  if (at === null || !step) return null;
  const end = (): void => {
    session.view.setState({ guideStep: null });
    void session.host.call("files.guideSeen", {});
  };
  const isLast = at === guideSteps.length - 1;
  return (
    <section className="guide" aria-label={words.guide}>
      <h2>{step.title}</h2>
      <p>{step.text}</p>
      <footer>
        <span className="quiet">{words.stepOf(at + 1, guideSteps.length)}</span>
        {!isLast && (
          <button type="button" className="fix" onClick={end}>
            {words.skip}
          </button>
        )}
        <button
          type="button"
          className="take"
          onClick={() => (isLast ? end() : session.view.setState({ guideStep: at + 1 }))}
        >
          {isLast ? words.done : words.next}
        </button>
      </footer>
    </section>
  );
}

import type { AskedReading, PacketCard } from "../../core/closeout/packet/packetFile.ts";
import { element } from "./element.ts";
import { type FieldView, fieldView } from "./fieldView.ts";
import type { PacketState } from "./packetState.ts";
import { words } from "./words.ts";

/** One terminal on the page. */
export type CardView = {
  readonly node: HTMLDetailsElement;
  readonly fields: readonly FieldView[];
  /** Says anew how many of its readings are in. */
  readonly count: () => void;
};

/** The card of a terminal: what is drawn, what to do, and a field for each reading. */
export function cardView(
  state: PacketState,
  card: PacketCard,
  photos: HTMLElement,
  onTyped: (asked: AskedReading) => void,
): CardView {
  const counted = element("span", { class: "count" });
  const groups = card.groups.map(({ title, asked }) => {
    const fields = asked.map((one) => fieldView(state, one, onTyped));
    const node = element(
      "section",
      { class: "group", "aria-label": `${title}, ${card.name}` },
      element("h3", {}, title),
      ...fields.map((one) => one.node),
    );
    return { fields, node };
  });
  const fields = groups.flatMap((one) => one.fields);
  const facts = element(
    "dl",
    {},
    ...card.facts.flatMap(([heading, text]) => [element("dt", {}, heading), element("dd", {}, text)]),
  );
  const node = element(
    "details",
    { class: "card" },
    element("summary", {}, element("h2", {}, card.name, element("span", { class: "place" }, card.place)), counted),
    facts,
    folded(words.steps, element("ol", {}, ...card.steps.map((one) => element("li", {}, one)))),
    folded(words.drawn, ...card.drawings.map((svg, index) => drawing(svg, words.drawnPage(card.name, index + 1)))),
    ...groups.map((one) => one.node),
    photos,
  );
  const count = (): void => {
    const asked = fields.filter((one) => !one.asked.isFurther);
    const done = asked.filter((one) => state.typed(one.asked) !== null).length;
    counted.textContent = words.count(done, asked.length);
  };
  count();
  return { node, fields, count };
}

function folded(title: string, ...inside: readonly Node[]): HTMLElement {
  return element("details", { class: "folded" }, element("summary", {}, title), ...inside);
}

/** A drawing as a picture: nothing in it can run. */
function drawing(svg: string, name: string): HTMLElement {
  const picture = element("img", { alt: name, src: `data:image/svg+xml,${encodeURIComponent(svg)}`, loading: "lazy" });
  return element("div", { class: "drawing", role: "region", "aria-label": name, tabindex: "0" }, picture);
}

import type { AskedReading } from "../../core/closeout/packet/packetFile.ts";
import { plainUnit, readingText, writingOf } from "../../core/closeout/packet/readingText.ts";
import { element } from "./element.ts";
import { judge } from "./judge.ts";
import type { PacketState } from "./packetState.ts";
import { words } from "./words.ts";

/** A field on the page. */
export type FieldView = {
  readonly node: HTMLElement;
  readonly asked: AskedReading;
  /** Shows what is kept, where another field or another page of the browser wrote it. */
  readonly refresh: () => void;
};

let fieldCount = 0;

/** A field for one reading: what is drawn over it, what it was understood as under it while one types. */
export function fieldView(state: PacketState, asked: AskedReading, onTyped: (asked: AskedReading) => void): FieldView {
  fieldCount += 1;
  const id = `field-${fieldCount}`;
  const isYesNo = writingOf(asked.what) === "yesNo";
  const told = element("p", { id: `${id}-told`, class: "told" });
  const says = element("p", { id: `${id}-says`, class: "says", role: "status" });
  told.textContent = toldOf(state, asked);
  const described = `${id}-told ${id}-says`;
  const type = (text: string): void => {
    state.type(asked, text);
    show(text);
    onTyped(asked);
  };
  const input = isYesNo ? yesNo(id, asked.label, described, type) : typing(id, asked, described, type);
  const show = (text: string): void => {
    const judged = judge(asked, text, state.sheet.unitSystem);
    says.textContent = judged.kind === "empty" ? "" : judged.says;
    node.dataset.stands = judged.kind;
    input.mark(judged.kind === "bad");
  };
  const unit = plainUnit(asked.what, state.sheet.unitSystem);
  const node = isYesNo
    ? element("div", { class: "field" }, input.node, told, says)
    : element(
        "div",
        { class: "field" },
        element("label", { for: id }, asked.label),
        told,
        element("div", { class: "typed" }, input.node, element("span", { class: "unit" }, unit)),
        says,
      );
  const refresh = (): void => {
    const text = state.typed(asked)?.text ?? "";
    input.set(text);
    show(text);
  };
  refresh();
  return { node, asked, refresh };
}

function toldOf({ sheet }: PacketState, { what, drawnText, before }: AskedReading): string {
  const says = what === "power" ? words.expectedIs : what === "resistance" ? words.limitIs : words.drawnIs;
  const drawn = drawnText === "" ? [] : [says(drawnText)];
  const standing = before ? [words.standing(readingText(what, before, sheet.unitSystem), before.by)] : [];
  return [...drawn, ...standing].join(" ");
}

type Input = {
  readonly node: HTMLElement;
  readonly set: (text: string) => void;
  readonly mark: (isBad: boolean) => void;
};

function typing(id: string, { what }: AskedReading, described: string, type: (text: string) => void): Input {
  const isFigure = ["figure", "port"].includes(writingOf(what));
  const field = what === "note" ? element("textarea", { rows: "2" }) : element("input", { type: "text" });
  field.id = id;
  field.setAttribute("aria-describedby", described);
  field.setAttribute("autocomplete", "off");
  field.setAttribute("autocapitalize", "off");
  field.maxLength = 2000;
  if (isFigure) field.inputMode = "numeric";
  field.addEventListener("input", () => type(field.value));
  return {
    node: field,
    // what a person is typing is never written over
    set: (text) => {
      if (field.value !== text && document.activeElement !== field) field.value = text;
    },
    mark: (isBad) => field.setAttribute("aria-invalid", String(isBad)),
  };
}

function yesNo(id: string, label: string, described: string, type: (text: string) => void): Input {
  const choices = [words.yes, words.no].map((word) => {
    const radio = element("input", { type: "radio", name: id, value: word.toLowerCase() });
    radio.addEventListener("change", () => type(radio.value));
    return { radio, node: element("label", { class: "choice" }, radio, element("span", {}, word)) };
  });
  const node = element(
    "fieldset",
    { "aria-describedby": described },
    element("legend", {}, label),
    ...choices.map((one) => one.node),
  );
  return {
    node,
    set: (text) => {
      for (const { radio } of choices) radio.checked = radio.value === text;
    },
    mark: () => {},
  };
}

import type { AskedReading, PacketSheet } from "../../core/closeout/packet/packetFile.ts";
import { type CardView, cardView } from "./cardView.ts";
import { element } from "./element.ts";
import type { FieldView } from "./fieldView.ts";
import { askToLast, openKeeping } from "./keeping.ts";
import { fieldName, type PacketState, packetState } from "./packetState.ts";
import { openPhotoKeeping, type PhotoKeeping } from "./photoKeeping.ts";
import { photoView } from "./photoView.ts";
import { words } from "./words.ts";
import { noteSent, packetFileOf } from "./writeFile.ts";
import "./packet.css";

const nowIso = (): string => new Date().toISOString();

/** Builds the page from what the office wrote into it. */
async function open(sheet: PacketSheet): Promise<void> {
  const keeping = openKeeping(sheet.packetId);
  const photos = await openPhotoKeeping(sheet.packetId);
  const state = packetState(sheet, keeping, nowIso);
  const said = element("p", { class: "said", role: "status" });
  const tell = (says: string): void => {
    said.textContent = says;
  };
  const onTyped = (asked: AskedReading): void => {
    for (const { field, card } of places.get(fieldName(asked)) ?? []) {
      field.refresh();
      card.count();
    }
  };
  const desk = { photos, who: state.who, nowIso, tell };
  const cards = sheet.cards.map((card) => cardView(state, card, photoView(card, desk), onTyped));
  // a height or a bond is asked for on the card of every terminal at its pole
  const places = new Map<string, { readonly field: FieldView; readonly card: CardView }[]>();
  for (const card of cards)
    for (const field of card.fields) {
      const name = fieldName(field.asked);
      places.set(name, [...(places.get(name) ?? []), { field, card }]);
    }
  const [first] = cards;
  if (first) first.node.open = true;
  addEventListener("storage", () => {
    for (const card of cards) {
      for (const field of card.fields) field.refresh();
      card.count();
    }
  });
  if (keeping.isLasting) void askToLast();
  else
    addEventListener("beforeunload", (event) => {
      if (state.asked.some((one) => state.typed(one) !== null)) event.preventDefault();
    });
  document.title = words.title(sheet.number, sheet.routeName);
  document.body.append(
    head(state, photos),
    element("main", {}, ...cards.map((one) => one.node)),
    element("footer", {}, said, writeButton(state, photos, tell)),
  );
}

function head(state: PacketState, photos: PhotoKeeping): HTMLElement {
  const { sheet, keeping } = state;
  const name = element("input", { id: "who", type: "text", autocomplete: "name", value: state.who() });
  name.maxLength = 200;
  name.addEventListener("input", () => void state.setWho(name.value));
  const kept = keeping.isLasting ? words.keptHere : words.notKept;
  return element(
    "header",
    {},
    element("h1", {}, words.title(sheet.number, sheet.routeName)),
    element("p", {}, words.crew(sheet.crew, sheet.revision, sheet.writtenBy, sheet.writtenIso.slice(0, 10))),
    element("p", { class: "caution" }, words.cautionLine),
    element(
      "details",
      { class: "folded" },
      element("summary", {}, words.cautions),
      element("ul", {}, ...sheet.cautions.map((one) => element("li", {}, one))),
    ),
    element("div", { class: "field" }, element("label", { for: "who" }, words.name), name),
    element("p", { class: keeping.isLasting ? "kept" : "caution" }, kept),
    ...(photos.isLasting ? [] : [element("p", { class: "caution" }, words.photosNotKept)]),
  );
}

function writeButton(state: PacketState, photos: PhotoKeeping, tell: (says: string) => void): HTMLElement {
  const button = element("button", { type: "button", class: "write" }, words.write);
  button.addEventListener("click", async () => {
    if (state.who().trim() === "") {
      tell(words.nameFirst);
      document.getElementById("who")?.focus();
      return;
    }
    const file = await packetFileOf(state, photos.all());
    if (file.readings.length + file.unread.length + file.photos.length === 0) return tell(words.nothing);
    const fileName = `${nameOf(file.routeName)}-packet-${state.sheet.number}-${nameOf(file.crew)}.json`;
    handOver(fileName, JSON.stringify(file));
    noteSent(state, file);
    tell(
      [words.written(fileName), ...(file.unread.length > 0 ? [words.unreadable(file.unread.length)] : [])].join(" "),
    );
  });
  return button;
}

function nameOf(text: string): string {
  return (
    text
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^-|-$/g, "") || "route"
  );
}

function handOver(fileName: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = element("a", { href: address, download: fileName });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

const written = document.getElementById("packet")?.textContent ?? "";
void open(JSON.parse(written));

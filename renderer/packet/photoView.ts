import type { PacketCard } from "../../core/closeout/packet/packetFile.ts";
import { element } from "./element.ts";
import type { PagePhoto, PhotoKeeping } from "./photoKeeping.ts";
import { shrunk } from "./shrink.ts";
import { words } from "./words.ts";

type Desk = {
  readonly photos: PhotoKeeping;
  readonly who: () => string;
  readonly nowIso: () => string;
  readonly tell: (says: string) => void;
};

const moments = ["before", "built", "after"] as const;

/** The photos of one card: taken or chosen, scaled down, said what they show, removed. */
export function photoView({ terminalId, name }: PacketCard, { photos, who, nowIso, tell }: Desk): HTMLElement {
  const list = element("ul", { class: "photos" });
  const moment = element("select", { id: `moment-${terminalId}` });
  for (const one of moments) moment.append(element("option", { value: one }, words.moments[one]));
  moment.value = "built";
  const file = element("input", { type: "file", accept: "image/*", multiple: "", class: "photo-file" });
  const keep = async (photo: PagePhoto): Promise<void> => {
    if (!(await photos.put(photo))) tell(words.photosNotKept);
  };
  const show = (): void => {
    const own = photos.all().filter((one) => one.terminalId === terminalId);
    list.replaceChildren(...own.map((one) => item(one)));
  };
  const item = (photo: PagePhoto): HTMLElement => {
    const address = URL.createObjectURL(photo.bytes);
    const picture = element("img", { src: address, alt: photo.caption || words.moments[photo.moment] });
    picture.addEventListener("load", () => URL.revokeObjectURL(address));
    const caption = element("input", { type: "text", value: photo.caption, "aria-label": words.caption });
    caption.placeholder = words.caption;
    caption.maxLength = 500;
    caption.addEventListener(
      "input",
      () => void keep({ ...photo, caption: caption.value, by: who(), atIso: nowIso() }),
    );
    const remove = element("button", { type: "button" }, words.remove);
    remove.addEventListener("click", () => {
      if (remove.textContent !== words.removeSurely) {
        remove.textContent = words.removeSurely;
        return;
      }
      void photos.remove(photo.id).then(show);
    });
    return element("li", {}, picture, element("p", {}, words.moments[photo.moment]), caption, remove);
  };
  file.addEventListener("change", async () => {
    for (const [index, one] of [...(file.files ?? [])].entries()) {
      const small = await shrunk(one);
      if (small === null) {
        tell(words.notPicture);
        continue;
      }
      const atIso = nowIso();
      const id = `${terminalId} ${atIso} ${index}`;
      const chosen = moments.find((each) => each === moment.value) ?? "built";
      await keep({ id, terminalId, moment: chosen, caption: "", by: who(), atIso, ...small });
    }
    file.value = "";
    show();
  });
  show();
  return element(
    "section",
    { class: "group", "aria-label": `${words.photos}, ${name}` },
    element("h3", {}, words.photos),
    element("div", { class: "field" }, element("label", { for: moment.id }, words.moment), moment),
    element("label", { class: "button" }, words.addPhoto, file),
    list,
  );
}

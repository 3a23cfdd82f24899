import type { RefKey } from "../app/ref.ts";
import type { Draft } from "./draft.ts";
import type { Frame } from "./frame.ts";

/** An attachment on its way up or down a pole. */
export type ProfileHand = {
  readonly attachmentId: string;
  /** Above the ground at the pole, m. */
  readonly heightM: number;
  /** The route as it would be. */
  readonly draft: Draft;
};

/** What the eye and hand are at in the profile; never part of the route. */
export type ProfileView = {
  readonly isOpen: boolean;
  /** Part of the height it takes. */
  readonly sizeFrac: number;
  /** Cable, or strand section without one, that is shown; null takes the first. */
  readonly way: RefKey | null;
  readonly frame: Frame;
  /** Station that is told about, m; null for none. */
  readonly atM: number | null;
  /** Attachment that arrow keys and the height field are about. */
  readonly attachmentId: string | null;
  readonly hand: ProfileHand | null;
  /** Height being typed for the attachment; null while none is. */
  readonly typed: string | null;
};

export const plainProfile: ProfileView = {
  isOpen: false,
  sizeFrac: 0.55,
  way: null,
  frame: { leftM: 0, baseM: 0, pxPerM: 1, upPxPerM: 10, widthPx: 0, heightPx: 0 },
  atM: null,
  attachmentId: null,
  hand: null,
  typed: null,
};

import type { Point } from "../../../core/plant/geometry.ts";
import type { RefKey } from "../../app/ref.ts";

/** The tools that add to the line by hand. */
export type AddingTool =
  | "pole"
  | "span"
  | "lateral"
  | "crossing"
  | "structure"
  | "groundPoint"
  | "attachment"
  | "guy"
  | "unit"
  | "terminal";

/** What a click or a drag has settled and a small form still asks for. */
export type AddingForm =
  | { readonly kind: "crossing"; readonly spanId: string; readonly offsetM: number; readonly widthM: number }
  | { readonly kind: "structure"; readonly spanId: string; readonly offsetM: number; readonly lengthM: number }
  | { readonly kind: "groundPoint"; readonly spanId: string; readonly offsetM: number }
  | { readonly kind: "attachment"; readonly poleId: string }
  /** A guy to an anchor at a point of the ground. */
  | { readonly kind: "guy"; readonly poleId: string; readonly at: Point }
  | { readonly kind: "unit"; readonly at: Point }
  /** The next pole at a length that is being typed, in the direction of a point. */
  | { readonly kind: "reach"; readonly fromPoleId: string; readonly toward: Point; readonly text: string };

/** A tool in hand and how far one has come with it. */
export type AddingState = {
  readonly tool: AddingTool;
  /** The pole a span, a line or a guy goes on from. */
  readonly fromPoleId: string | null;
  readonly form: AddingForm | null;
  /** Model a terminal is hung of; null for the route's usual one. */
  readonly modelId: string | null;
};

/** A tool just taken in hand. */
export function freshTool(tool: AddingTool): AddingState {
  return { tool, fromPoleId: null, form: null, modelId: null };
}

/** The tool once its form is added: a guy is done with its pole, a line goes on from it. */
export function formDone(adding: AddingState): AddingState {
  return { ...adding, form: null, fromPoleId: adding.tool === "guy" ? null : adding.fromPoleId };
}

/** One step back: what is being filled in, then the pole one goes on from, then the tool itself. */
export function stepBack(adding: AddingState): AddingState | null {
  if (adding.form) return { ...adding, form: null };
  return adding.fromPoleId === null ? null : { ...adding, fromPoleId: null };
}

/** The tool without what it had come to where an undo took that away. */
export function withoutGone(adding: AddingState, isThere: (ref: RefKey) => boolean): AddingState {
  const { fromPoleId, form } = adding;
  const isFormThere = form === null || isThereOf(form, isThere);
  const isFromThere = fromPoleId === null || isThere(`pole/${fromPoleId}`);
  if (isFormThere && isFromThere) return adding;
  return { ...adding, form: isFormThere ? form : null, fromPoleId: isFromThere ? fromPoleId : null };
}

function isThereOf(form: AddingForm, isThere: (ref: RefKey) => boolean): boolean {
  switch (form.kind) {
    case "crossing":
    case "structure":
    case "groundPoint":
      return isThere(`span/${form.spanId}`);
    case "attachment":
    case "guy":
      return isThere(`pole/${form.poleId}`);
    case "reach":
      return isThere(`pole/${form.fromPoleId}`);
    case "unit":
      return true;
  }
}

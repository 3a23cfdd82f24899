import type { Pen } from "../../renderer/canvas/paint.ts";

/** What of the pen's state shows in what it inks. */
const shows: Readonly<Record<string, readonly string[]>> = {
  stroke: ["strokeStyle", "lineWidth", "dashes"],
  strokeRect: ["strokeStyle", "lineWidth", "dashes"],
  fill: ["fillStyle"],
  fillRect: ["fillStyle"],
  fillText: ["fillStyle", "font", "textAlign", "textBaseline"],
};

/** A pen that notes what it inks instead of inking it: one text a piece, a path told subpath by subpath with the style it is inked in. */
export function openRecordingPen(): { readonly pen: Pen; readonly pieces: () => readonly string[] } {
  const pieces: string[] = [];
  let subpaths: unknown[][] = [];
  const style: Record<string, unknown> = {};
  const ink = (what: string, inked: unknown): void => {
    pieces.push(JSON.stringify([what, inked, shows[what]?.map((name) => style[name])]));
  };
  const go = (...step: unknown[]): void => {
    if (step[0] === "moveTo" || subpaths.length === 0) subpaths.push([]);
    subpaths.at(-1)?.push(step);
  };
  const calls: Record<string, (...given: never[]) => unknown> = {
    beginPath: () => {
      subpaths = [];
    },
    moveTo: (...at) => go("moveTo", ...at),
    lineTo: (...at) => go("lineTo", ...at),
    arc: (...at) => go("arc", ...at),
    roundRect: (...at) => go("roundRect", ...at),
    stroke: () => subpaths.forEach((one) => void ink("stroke", one)),
    fill: () => subpaths.forEach((one) => void ink("fill", one)),
    fillRect: (...box) => ink("fillRect", box),
    strokeRect: (...box) => ink("strokeRect", box),
    fillText: (...text) => ink("fillText", text),
    measureText: (text: string) => ({ width: text.length * 6 }),
    setLineDash: (given: readonly number[]) => {
      Object.assign(style, { dashes: given });
    },
  };
  const pen = new Proxy(style, {
    get(_, name) {
      const call = calls[String(name)];
      if (!call) throw new Error(`the recording pen cannot ${String(name)}`);
      return call;
    },
  });
  return { pen: pen as unknown as Pen, pieces: () => pieces }; // it answers to what the profile asks of a pen, and throws at the rest
}

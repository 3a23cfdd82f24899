import type { TraceFrame } from "./traceFrame.ts";

/** One of the two marks a distance and a loss are read between. */
export type CursorName = "a" | "b";

/** What the eye and hand are at in the traces; never part of the route. */
export type TraceView = {
  readonly isOpen: boolean;
  /** Part of the height it takes. */
  readonly sizeFrac: number;
  /** Trace that is told about; null takes the first. */
  readonly traceId: string | null;
  /** Whether the other traces of its fiber are drawn with it. */
  readonly areOthersShown: boolean;
  readonly frame: TraceFrame;
  /** True until the trace has been shown whole. */
  readonly isFitWanted: boolean;
  /** Marks as fiber from the hub, m; null where they are put away. */
  readonly a: number | null;
  readonly b: number | null;
  /** The mark that keys move. */
  readonly held: CursorName;
  /** Place of the trace under the hand, fiber from the hub, m; null for none. */
  readonly underM: number | null;
};

export const plainTraces: TraceView = {
  isOpen: false,
  sizeFrac: 0.5,
  traceId: null,
  areOthersShown: true,
  frame: { leftM: 0, topDb: 0, pxPerM: 1, pxPerDb: 10, widthPx: 0, heightPx: 0 },
  isFitWanted: true,
  a: null,
  b: null,
  held: "a",
  underM: null,
};

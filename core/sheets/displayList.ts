/** Layers a drawing is split into; writers turn them into the format's own layers. */
export const layers = [
  "border",
  "poles",
  "strand",
  "cable",
  "terminals",
  "slack",
  "crossings",
  "others",
  "units",
  "drops",
  "dimensions",
  "text",
  "findings",
] as const;
export type Layer = (typeof layers)[number];

/** Line weights on paper, mm. */
export const pensMm = { fine: 0.18, thin: 0.25, medium: 0.35, thick: 0.5 } as const;
export type Pen = keyof typeof pensMm;

/** Faces: narrow for labels along the strand, plain for tables and notes. */
export type Face = "narrow" | "plain" | "plainBold";

type Placed = { readonly layer: Layer };

/** A polyline in paper mm, y up from the sheet's lower left corner. */
export type LineMark = Placed & {
  readonly kind: "line";
  readonly pointsMm: readonly (readonly [number, number])[];
  readonly pen: Pen;
  /** Lengths of dash and gap, mm; empty for a full line. */
  readonly dashMm: readonly number[];
  readonly closed: boolean;
  /** Grey of the fill, 0 black to 1 white; null for none. */
  readonly fill: number | null;
};

/** Part of a circle, counter-clockwise from startRad to endRad; a whole circle where they differ by a full turn. */
export type ArcMark = Placed & {
  readonly kind: "arc";
  readonly centreMm: readonly [number, number];
  readonly radiusMm: number;
  readonly startRad: number;
  readonly endRad: number;
  readonly pen: Pen;
  readonly fill: number | null;
};

/** One line of text. */
export type TextMark = Placed & {
  readonly kind: "text";
  readonly text: string;
  /** The anchor: on the base line, at the side `align` tells. */
  readonly atMm: readonly [number, number];
  /** Height of a capital letter, mm. */
  readonly heightMm: number;
  readonly face: Face;
  readonly align: "left" | "middle" | "right";
  /** Turned counter-clockwise, rad. */
  readonly turnRad: number;
};

export type Mark = LineMark | ArcMark | TextMark;

/** One sheet of paper with what is drawn on it. */
export type Sheet = {
  /** Sheet number as printed, such as "5". */
  readonly number: string;
  readonly title: string;
  readonly sizeMm: { readonly width: number; readonly height: number };
  readonly marks: readonly Mark[];
};

/** A drawing set: sheets in order and what the file says of itself. */
export type DrawingSet = {
  readonly title: string;
  readonly subject: string;
  readonly author: string;
  readonly sheets: readonly Sheet[];
};

/** Turns a drawing set into one format's bytes or text. Same set, same output. */
export type SheetWriter<Out> = (set: DrawingSet) => Out;

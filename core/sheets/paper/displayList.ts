import { sheetLayers } from "../../model/drawnLayers.ts";
import type { LayerNames } from "../../model/layerNames.ts";
import type { SheetKind } from "../book.ts";
import type { Part } from "./part.ts";

/** Layers a drawing is split into, in the order they are painted; writers turn them into the format's own layers. */
export const layers = sheetLayers;
export type Layer = (typeof layers)[number];

/** Line weights on paper, mm. */
export const pensMm = { fine: 0.13, thin: 0.18, medium: 0.25, bold: 0.35, thick: 0.5, heavy: 0.7 } as const;
export type Pen = keyof typeof pensMm;

/**
 * Faces: narrow for labels along the strand, plain for tables and notes. Characters that a face lacks are drawn from the
 * symbols face.
 */
const faces = ["narrow", "narrowBold", "plain", "plainBold"] as const;
export type Face = (typeof faces)[number];

/** Grey from 0 black to 1 white, or red, green and blue from 0 to 1; null draws no fill. */
export type Fill = number | readonly [red: number, green: number, blue: number] | null;

/** A place on the sheet: mm right and up from its lower left corner. */
export type PaperPoint = readonly [xMm: number, yMm: number];

type Placed = { readonly layer: Layer; readonly part?: Part };

/** A polyline or, closed, a polygon. */
export type LineMark = Placed & {
  readonly kind: "line";
  readonly pointsMm: readonly PaperPoint[];
  /** null draws no outline. */
  readonly pen: Pen | null;
  /** Lengths of dash and gap, mm; empty for a full line. */
  readonly dashMm: readonly number[];
  readonly closed: boolean;
  readonly fill: Fill;
};

/** Part of a circle, counter-clockwise from startRad to endRad; a whole circle where they differ by a full turn. */
export type ArcMark = Placed & {
  readonly kind: "arc";
  readonly centreMm: PaperPoint;
  readonly radiusMm: number;
  readonly startRad: number;
  readonly endRad: number;
  readonly pen: Pen | null;
  readonly fill: Fill;
};

/** One line of text. */
export type TextMark = Placed & {
  readonly kind: "text";
  readonly text: string;
  /** The anchor: on the base line, at the side `align` tells. */
  readonly atMm: PaperPoint;
  /** Height of a capital letter, mm. */
  readonly heightMm: number;
  readonly face: Face;
  readonly align: Align;
  /** Turned counter-clockwise, rad. */
  readonly turnRad: number;
  /** Grey from 0 black to 1 white. */
  readonly grey: number;
};
export type Align = "left" | "middle" | "right";

/** A picture, upright and filling its box. */
export type ImageMark = Placed & {
  readonly kind: "image";
  /** Left, bottom, width, height, mm. */
  readonly boxMm: readonly [x: number, y: number, width: number, height: number];
  /** The picture itself as a data address. */
  readonly href: string;
  /** What it shows, for formats and readers that cannot show it. */
  readonly told: string;
};

export type Mark = LineMark | ArcMark | TextMark | ImageMark;

export type SheetSizeMm = { readonly width: number; readonly height: number };

/** A rectangle of the sheet that leads to another sheet. */
export type SheetLink = {
  readonly boxMm: readonly [x: number, y: number, width: number, height: number];
  readonly to: string;
};

/** One sheet of paper with what is drawn on it. */
export type Sheet = {
  /** Sheet number as printed, such as "5". */
  readonly number: string;
  readonly title: string;
  readonly kind: SheetKind;
  /** What it shows, by names that stay on every paper. */
  readonly keys: readonly string[];
  /** What its title block says of the scale. */
  readonly scale: string;
  /** What stands on it and is looked for by name; where not given, its title. */
  readonly names?: readonly string[];
  readonly sizeMm: SheetSizeMm;
  readonly marks: readonly Mark[];
  readonly links: readonly SheetLink[];
};

/** The marks of a sheet by the layer they are on, in the order they are drawn. */
export function marksByLayer({ marks }: Sheet): ReadonlyMap<Layer, readonly Mark[]> {
  const byLayer = new Map<Layer, Mark[]>();
  for (const mark of marks) {
    const layer = byLayer.get(mark.layer);
    if (layer) layer.push(mark);
    else byLayer.set(mark.layer, [mark]);
  }
  return byLayer;
}

/** A drawing set: sheets in order and what the file says of itself. */
export type DrawingSet = {
  readonly title: string;
  readonly subject: string;
  readonly author: string;
  /** Date of the revision drawn, as its row tells it; empty where there is none. */
  readonly dateIso: string;
  /** What the company calls layers. */
  readonly layerNames: LayerNames;
  readonly sheets: readonly Sheet[];
};

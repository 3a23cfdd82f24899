/** A place of the drawing, in its units. */
export type DxfPoint = readonly [x: number, y: number];

/** What is drawn, on a layer of the drawing; colours are numbers of the format's own palette. */
export type DxfEntity = { readonly layer: string; readonly colour?: number } & (
  | {
      readonly kind: "line";
      readonly points: readonly DxfPoint[];
      readonly closed: boolean;
      readonly dashed: boolean;
      /** Width of the line as drawn; 0 leaves it to the plotter. */
      readonly width: number;
      /** Tangent of a quarter of the angle each piece turns through, counter-clockwise; straight where left out. */
      readonly bulges?: readonly number[];
    }
  | { readonly kind: "circle"; readonly centre: DxfPoint; readonly radius: number }
  /** A filled triangle or quadrilateral, corners in turn. */
  | { readonly kind: "solid"; readonly corners: readonly DxfPoint[] }
  | {
      readonly kind: "text";
      readonly text: string;
      /** The middle of its base line. */
      readonly at: DxfPoint;
      readonly height: number;
      readonly turnRad: number;
      /** Width it is stretched or narrowed to, whatever the font of the reader. */
      readonly width: number;
    }
  | {
      readonly kind: "insert";
      readonly block: string;
      readonly at: DxfPoint;
      readonly turnRad: number;
      /** True turns its right side to the left. */
      readonly mirrored: boolean;
    }
);

/** A symbol that is drawn once and put down often. */
export type DxfBlock = { readonly name: string; readonly entities: readonly DxfEntity[] };

export type DxfLayer = { readonly name: string; readonly colour: number };

export type DxfUnit = "ft" | "mm" | "m";

export type DxfDrawing = {
  readonly unit: DxfUnit;
  /** Layer 0 comes by itself. */
  readonly layers: readonly DxfLayer[];
  readonly blocks: readonly DxfBlock[];
  readonly entities: readonly DxfEntity[];
  /** Dash and gap of dashed lines, in the drawing's units. */
  readonly dash: readonly [dash: number, gap: number];
};

/** Smallest rectangle round what is drawn; words and blocks count by their places. Zeros where nothing is drawn. */
export function extentsOf(entities: readonly DxfEntity[]): { readonly low: DxfPoint; readonly high: DxfPoint } {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of entities.flatMap(placesOf)) {
    [left, bottom] = [Math.min(left, x), Math.min(bottom, y)];
    [right, top] = [Math.max(right, x), Math.max(top, y)];
  }
  return left > right ? { low: [0, 0], high: [0, 0] } : { low: [left, bottom], high: [right, top] };
}

function placesOf(entity: DxfEntity): readonly DxfPoint[] {
  switch (entity.kind) {
    case "line":
      return entity.points;
    case "solid":
      return entity.corners;
    case "text":
    case "insert":
      return [entity.at];
    case "circle": {
      const { centre, radius } = entity;
      return [
        [centre[0] - radius, centre[1] - radius],
        [centre[0] + radius, centre[1] + radius],
      ];
    }
  }
}

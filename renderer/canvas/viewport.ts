/** A rectangle on the route's grid, m. */
export type Box = {
  readonly westM: number;
  readonly southM: number;
  readonly eastM: number;
  readonly northM: number;
};

/** Which part of the ground the diagram shows: the point at its middle, and how many pixels a metre takes. North is up. */
export type Viewport = {
  readonly centreEastM: number;
  readonly centreNorthM: number;
  readonly pxPerM: number;
  readonly widthPx: number;
  readonly heightPx: number;
};

/** Scale 100 %: 1 to 2400 (1 in to 200 ft) on a screen of 96 px to the inch. */
export const fullScalePxPerM = 96 / (0.0254 * 2400);

const leastPxPerM = 0.004;
const mostPxPerM = 80;

/** Whether a scale is one the diagram can be drawn at. */
export function isDrawable(pxPerM: number): boolean {
  return pxPerM >= leastPxPerM && pxPerM <= mostPxPerM;
}

/** Scale of the view against 100 %. */
export function zoomOf(view: Viewport): number {
  return view.pxPerM / fullScalePxPerM;
}

/** Pixel column of an easting. */
export function screenX(view: Viewport, eastM: number): number {
  return (eastM - view.centreEastM) * view.pxPerM + view.widthPx / 2;
}

/** Pixel row of a northing, down from the top. */
export function screenY(view: Viewport, northM: number): number {
  return (view.centreNorthM - northM) * view.pxPerM + view.heightPx / 2;
}

/** The point of the ground under a pixel. */
export function groundAt(
  view: Viewport,
  xPx: number,
  yPx: number,
): { readonly eastM: number; readonly northM: number } {
  return {
    eastM: view.centreEastM + (xPx - view.widthPx / 2) / view.pxPerM,
    northM: view.centreNorthM - (yPx - view.heightPx / 2) / view.pxPerM,
  };
}

/** The ground in view, with so many pixels more on every side. */
export function shownBox(view: Viewport, marginPx: number): Box {
  const halfWidthM = (view.widthPx / 2 + marginPx) / view.pxPerM;
  const halfHeightM = (view.heightPx / 2 + marginPx) / view.pxPerM;
  return {
    westM: view.centreEastM - halfWidthM,
    eastM: view.centreEastM + halfWidthM,
    southM: view.centreNorthM - halfHeightM,
    northM: view.centreNorthM + halfHeightM,
  };
}

/** Zooms by a factor so that the ground under a pixel stays under it; stops at both ends of the scale. */
export function zoomAbout(view: Viewport, xPx: number, yPx: number, factor: number): Viewport {
  const pxPerM = Math.min(mostPxPerM, Math.max(leastPxPerM, view.pxPerM * factor));
  const kept = groundAt(view, xPx, yPx);
  return {
    ...view,
    pxPerM,
    centreEastM: kept.eastM - (xPx - view.widthPx / 2) / pxPerM,
    centreNorthM: kept.northM + (yPx - view.heightPx / 2) / pxPerM,
  };
}

/** Moves the ground with the hand by so many pixels. */
export function panBy(view: Viewport, dxPx: number, dyPx: number): Viewport {
  return {
    ...view,
    centreEastM: view.centreEastM - dxPx / view.pxPerM,
    centreNorthM: view.centreNorthM + dyPx / view.pxPerM,
  };
}

/** Shows a box whole, with a margin of pixels about it; never closer than `closestPxPerM`. */
export function fitTo(view: Viewport, box: Box, marginPx: number, closestPxPerM = 4 * fullScalePxPerM): Viewport {
  const roomX = Math.max(40, view.widthPx - 2 * marginPx);
  const roomY = Math.max(40, view.heightPx - 2 * marginPx);
  const scale = Math.min(roomX / Math.max(box.eastM - box.westM, 1), roomY / Math.max(box.northM - box.southM, 1));
  return {
    ...view,
    pxPerM: Math.min(closestPxPerM, mostPxPerM, Math.max(leastPxPerM, scale)),
    centreEastM: (box.westM + box.eastM) / 2,
    centreNorthM: (box.southM + box.northM) / 2,
  };
}

/** Puts a point at the middle, at least at the given scale. */
export function centreOn(view: Viewport, eastM: number, northM: number, leastScalePxPerM: number): Viewport {
  return {
    ...view,
    centreEastM: eastM,
    centreNorthM: northM,
    pxPerM: Math.max(view.pxPerM, leastScalePxPerM),
  };
}

/** The view between two, for showing where a thing went; scale is blended by ratio so that it looks even. */
export function blend(from: Viewport, to: Viewport, partFrac: number): Viewport {
  const mix = (a: number, b: number): number => a + (b - a) * partFrac;
  return {
    ...to,
    centreEastM: mix(from.centreEastM, to.centreEastM),
    centreNorthM: mix(from.centreNorthM, to.centreNorthM),
    pxPerM: from.pxPerM * (to.pxPerM / from.pxPerM) ** partFrac,
  };
}

/** Whether a point of the ground is in view, so many pixels inside the edge. */
export function isShown(view: Viewport, eastM: number, northM: number, insetPx: number): boolean {
  const x = screenX(view, eastM);
  const y = screenY(view, northM);
  return x >= insetPx && y >= insetPx && x <= view.widthPx - insetPx && y <= view.heightPx - insetPx;
}

import type { Viewport } from "./viewport.ts";

/** Side of a bucket, px: two marks nearer than this look like one. */
const bucketPx = 4;

/** From afar one mark a bucket is enough, however many things stand there; what is off the screen is left out. */
export function openScreenBuckets(view: Viewport): (x: number, y: number) => boolean {
  const columnCount = Math.ceil(view.widthPx / bucketPx) + 1;
  const taken = new Uint8Array(columnCount * (Math.ceil(view.heightPx / bucketPx) + 1));
  return (x, y) => {
    if (x < 0 || y < 0 || x > view.widthPx || y > view.heightPx) return false;
    const bucket = Math.floor(y / bucketPx) * columnCount + Math.floor(x / bucketPx);
    if (taken[bucket]) return false;
    taken[bucket] = 1;
    return true;
  };
}

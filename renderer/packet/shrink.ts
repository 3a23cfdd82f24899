/** Longest side of a photo, px, and how much of it JPEG keeps: enough to read a tag; common practice, no source. */
const mostPx = 1280;
const quality = 0.8;

/** A picture scaled down to JPEG; null where the browser cannot read it. */
export async function shrunk(
  file: Blob,
): Promise<{ readonly bytes: Blob; readonly widthPx: number; readonly heightPx: number } | null> {
  const picture = await createImageBitmap(file).catch(() => null);
  if (picture === null) return null;
  const scale = Math.min(1, mostPx / Math.max(picture.width, picture.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const bytes = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/jpeg", quality));
  return bytes && { bytes, widthPx: canvas.width, heightPx: canvas.height };
}

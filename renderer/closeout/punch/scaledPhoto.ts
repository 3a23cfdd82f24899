/** Longest side a photo is kept at, px: what is seen on it is still to be read on a printed page. */
const longestPx = 1600;

/** A photo as it is kept. */
export type ScaledPhoto = { readonly bytesBase64: string; readonly widthPx: number; readonly heightPx: number };

/** A picture scaled down for keeping, as JPEG; null where the file is no picture. */
export async function scaledPhoto(file: File): Promise<ScaledPhoto | null> {
  const bitmap = await createImageBitmap(file).catch(() => null);
  if (!bitmap) return null;
  const frac = Math.min(1, longestPx / Math.max(bitmap.width, bitmap.height));
  const [widthPx, heightPx] = [bitmap.width, bitmap.height].map((side) => Math.max(1, Math.round(side * frac)));
  const canvas = document.createElement("canvas");
  canvas.width = widthPx ?? 1;
  canvas.height = heightPx ?? 1;
  canvas.getContext("2d")?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const [, bytesBase64 = ""] = canvas.toDataURL("image/jpeg", 0.85).split(",");
  return { bytesBase64, widthPx: canvas.width, heightPx: canvas.height };
}

/** The kind of picture bytes begin like; null where they are neither. */
export function pictureKind(bytes: Uint8Array): "jpeg" | "png" | null {
  const starts = (...signature: readonly number[]) => signature.every((one, index) => bytes[index] === one);
  if (starts(0xff, 0xd8, 0xff)) return "jpeg";
  return starts(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a) ? "png" : null;
}

/** Hands a file to the person as a download. */
export function handOver(fileName: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Letters of base64 turned into bytes at a time, a multiple of four: some 20 ms of a slow machine. */
const pieceLetters = 1 << 20;

/** A file that came over the contract as text; a large one is taken piece by piece, so that the window goes on meanwhile. */
export async function fileOf(base64: string, type: string): Promise<Blob> {
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  for (let at = 0; at < base64.length; at += pieceLetters) {
    if (at > 0) await new Promise((resolve) => setTimeout(resolve));
    pieces.push(bytesOf(base64.slice(at, at + pieceLetters)));
  }
  return new Blob(pieces, { type });
}

/** Bytes that came over the contract as text. */
export function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  const letters = atob(base64);
  const bytes = new Uint8Array(letters.length);
  for (let index = 0; index < letters.length; index += 1) bytes[index] = letters.charCodeAt(index);
  return bytes;
}

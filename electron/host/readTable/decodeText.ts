import { fail, ok, type Result } from "../../../core/model/result.ts";

/** Encodings a person may name; left out, the file's own marks decide. */
export const textEncodings = [
  "utf-8",
  "utf-16le",
  "utf-16be",
  "windows-1252",
  "iso-8859-1",
  "shift_jis",
  "euc-jp",
  "gb18030",
  "big5",
  "euc-kr",
] as const;

export type TextEncoding = (typeof textEncodings)[number];

export type DecodedText = { readonly text: string; readonly encoding: TextEncoding; readonly note: string };

/**
 * Text of a file. A byte order mark decides; without one UTF-8 where the bytes fit it, else windows-1252, which is said in the
 * note since any bytes fit that. A named encoding is held to: bytes that do not fit it refuse with "bad-encoding".
 *
 * @param name name of the file, for messages
 * @param named the encoding the person named
 */
export function decodeText(name: string, bytes: Uint8Array, named?: TextEncoding): Result<DecodedText> {
  const marked = markOf(bytes);
  if (named !== undefined) {
    const text = decoded(bytes, named);
    return text === null ? misfit(name, named) : ok({ text, encoding: named, note: "" });
  }
  if (marked !== null) {
    const text = decoded(bytes, marked);
    return text === null ? misfit(name, marked) : ok({ text, encoding: marked, note: "" });
  }
  const utf8 = decoded(bytes, "utf-8");
  if (utf8 !== null && !utf8.includes("\0")) return ok({ text: utf8, encoding: "utf-8", note: "" });
  if (bytes.includes(0)) {
    return fail(
      "not-text",
      "The file is not text: it has zero bytes in it.",
      name,
      "Give CSV, XLSX, GeoJSON, KML or GPX; for UTF-16 without a byte order mark name the encoding.",
    );
  }
  const note = "The file is not UTF-8 and is read as windows-1252; if names look wrong, name its encoding.";
  return ok({ text: decoded(bytes, "windows-1252") ?? "", encoding: "windows-1252", note });
}

function markOf(bytes: Uint8Array): TextEncoding | null {
  const [a, b, c] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return "utf-8";
  if (a === 0xff && b === 0xfe) return "utf-16le";
  return a === 0xfe && b === 0xff ? "utf-16be" : null;
}

function decoded(bytes: Uint8Array, encoding: TextEncoding): string | null {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function misfit(name: string, encoding: TextEncoding): Result<DecodedText> {
  return fail(
    "bad-encoding",
    `The file's bytes do not fit the encoding ${encoding}.`,
    name,
    `Name another encoding: ${textEncodings.join(", ")}.`,
  );
}

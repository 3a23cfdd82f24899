import { fail, ok, type Result } from "../../model/result.ts";
import { type PacketFile, packetFile } from "./packetFile.ts";
import { packetFileMostChars, packetFormat, packetVersion } from "./packetFormat.ts";

const mend = "Ask the crew for the file its page wrote when it was done.";

/**
 * Reads the file a crew brings back: all of it, or nothing.
 *
 * Faults: bad-packet where it is no such file or is damaged, newer-packet where a newer program wrote it.
 */
export function readPacketFile(text: string, fileName: string): Result<PacketFile> {
  if (text.length > packetFileMostChars)
    return fail("bad-packet", "The file is too long for a field packet.", fileName, mend);
  const said = parsed(text);
  if (said === undefined) return fail("bad-packet", "The file is not a field packet: it is not JSON.", fileName, mend);
  const { format, version } = isObject(said) ? said : {};
  if (format !== packetFormat) return fail("bad-packet", "The file is not a field packet.", fileName, mend);
  if (typeof version === "number" && version > packetVersion)
    return fail("newer-packet", "A newer program wrote this packet.", fileName, "Update the program.");
  const checked = packetFile.safeParse(said);
  if (checked.success) return ok(checked.data);
  const [issue] = checked.error.issues;
  return fail(
    "bad-packet",
    `The field packet is damaged: ${issue?.message ?? "unknown shape"}.`,
    [fileName, ...(issue?.path ?? [])].join(", "),
    mend,
  );
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}

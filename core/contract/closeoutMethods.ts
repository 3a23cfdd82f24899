import { z } from "zod";
import { packetFileMostChars } from "../closeout/packet/packetFormat.ts";

const routeId = z.string().min(1);
const hash = z.string().length(64);

/** What the host is asked about what was built. */
export const closeoutMethods = {
  /** Keeps the bytes of a photo or a trace in the route file, before the edit that names them by their hash. */
  "kept.keep": {
    request: z.strictObject({ routeId, bytesBase64: z.base64() }),
    reply: z.strictObject({ hash }),
  },
  "kept.read": {
    request: z.strictObject({ routeId, hash }),
    reply: z.strictObject({ bytesBase64: z.string() }),
  },
  /** The page of a packet that was given, as one file. */
  "packet.write": {
    request: z.strictObject({ routeId, packetId: z.string() }),
    reply: z.strictObject({ fileName: z.string(), html: z.string() }),
  },
  /** Takes in the file a crew brings back, as one edit. */
  "packet.take": {
    request: z.strictObject({ routeId, fileName: z.string().max(300), text: z.string().max(packetFileMostChars) }),
    reply: z.strictObject({
      number: z.number(),
      crew: z.string(),
      takenCount: z.number(),
      photoCount: z.number(),
      alreadyCount: z.number(),
      rivalCount: z.number(),
      refused: z.array(z.strictObject({ what: z.string(), why: z.string() })).readonly(),
    }),
  },
} as const;

import { z } from "zod";

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
} as const;

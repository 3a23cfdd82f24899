import { fail, ok, type Result, refused } from "../../core/model/result.ts";
import { keepFile, keptFile } from "../../db/keptFiles.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import type { Handlers } from "./serve.ts";
import type { Session } from "./session.ts";

type Parts = {
  readonly withRoute: <T>(
    routeId: string,
    work: (session: Session) => Result<T> | Promise<Result<T>>,
  ) => Promise<Result<T>>;
};

/** Answers about what was built. */
export function closeoutHandlers({ withRoute }: Parts): Pick<Handlers, "kept.keep" | "kept.read"> {
  return {
    "kept.keep": ({ routeId, bytesBase64 }) =>
      withRoute(routeId, ({ file, lookOnly }) => {
        if (lookOnly) return refused(lookOnly);
        return onDisk(file.path, () => ok({ hash: keepFile(file.db, Buffer.from(bytesBase64, "base64")) }));
      }),
    "kept.read": ({ routeId, hash }) =>
      withRoute(routeId, ({ file }) => {
        const bytes = keptFile(file.db, hash);
        if (bytes) return ok({ bytesBase64: Buffer.from(bytes).toString("base64") });
        return fail("not-kept", "The route file does not hold these bytes.", hash, "Bring the file in again.");
      }),
  };
}

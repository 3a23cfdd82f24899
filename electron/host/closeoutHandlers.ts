import type { closeoutMethods } from "../../core/contract/closeoutMethods.ts";
import type { EditReply } from "../../core/contract/contract.ts";
import { fail, ok, type Result, refused } from "../../core/model/result.ts";
import { keepFile, keptFile } from "../../db/keptFiles.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import type { RunJob } from "./jobs.ts";
import type { Handlers } from "./serve.ts";
import type { Session } from "./session.ts";
import { takePacket } from "./takePacket.ts";
import { writePacket } from "./writePacket.ts";

type Parts = {
  readonly withRoute: <T>(
    routeId: string,
    work: (session: Session) => Result<T> | Promise<Result<T>>,
  ) => Promise<Result<T>>;
  /** Tells every window of an edit that was carried out. */
  readonly told: (routeId: string, done: Result<EditReply>) => Result<EditReply>;
  readonly runJob: RunJob;
};

/** Answers about what was built. */
export function closeoutHandlers({ withRoute, told, runJob }: Parts): Pick<Handlers, keyof typeof closeoutMethods> {
  return {
    "kept.keep": ({ routeId, bytesBase64 }) =>
      withRoute(routeId, ({ file, shut }) => {
        const fault = shut();
        if (fault) return refused(fault);
        return onDisk(file.path, () => ok({ hash: keepFile(file.db, Buffer.from(bytesBase64, "base64")) }));
      }),
    "kept.read": ({ routeId, hash }) =>
      withRoute(routeId, ({ file }) => {
        const bytes = keptFile(file.db, hash);
        if (bytes) return ok({ bytesBase64: Buffer.from(bytes).toString("base64") });
        return fail("not-kept", "The route file does not hold these bytes.", hash, "Bring the file in again.");
      }),
    "packet.write": ({ routeId, packetId }) => withRoute(routeId, (session) => writePacket(session, runJob, packetId)),
    "packet.take": ({ routeId, fileName, text }) =>
      withRoute(routeId, (session) => {
        const taken = takePacket(session, fileName, text);
        if (!taken.ok) return taken;
        told(routeId, ok(taken.value.edit));
        return ok(taken.value.told);
      }),
  };
}

import { basename } from "node:path";
import type { ExportFormat } from "../../core/contract/exportMethods.ts";
import { writeRouteDxf } from "../../core/dxf/writeRouteDxf.ts";
import { writeGeojson } from "../../core/exchange/writeGeojson.ts";
import { writeKml } from "../../core/exchange/writeKml.ts";
import { ok, type Result } from "../../core/model/result.ts";
import { routeWorkbook } from "./routeSchedules.ts";
import type { Handlers } from "./serve.ts";
import type { Session } from "./session.ts";

/** A route as a file for other programs. Faults: those of the writers. */
export async function exportFile(session: Session, format: ExportFormat): Promise<Result<string | Uint8Array>> {
  switch (format) {
    case "xlsx":
      return ok(await routeWorkbook(session));
    case "dxf":
      return writeRouteDxf(session.route());
    case "kml":
      return writeKml(session.route());
    case "geojson":
      return writeGeojson(session.route());
  }
}

type Open = {
  readonly withRoute: <T>(
    routeId: string,
    work: (session: Session) => Result<T> | Promise<Result<T>>,
  ) => Promise<Result<T>>;
};

/** Answers with a route for other programs. */
export function exportHandlers({ withRoute }: Open): Pick<Handlers, "export.file"> {
  return {
    "export.file": ({ routeId, format }) =>
      withRoute(routeId, async (session) => {
        const written = await exportFile(session, format);
        if (!written.ok) return written;
        const fileName = `${basename(session.fileName, ".strand")}.${format}`;
        return ok({ fileName, contentBase64: Buffer.from(written.value).toString("base64") });
      }),
  };
}

import type { ExportFormat } from "../../core/contract/exportMethods.ts";
import { fileOf, handOver } from "./handOver.ts";
import { openRouteOf, type Session, showFault, tell } from "./session.ts";
import { words } from "./words.ts";

const mediaTypes: Readonly<Record<ExportFormat, string>> = {
  xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  dxf: "image/vnd.dxf",
  kml: "application/vnd.google-earth.kml+xml",
  geojson: "application/geo+json",
};

/** Hands the route to the person as a file for other programs. */
export async function exportRoute(session: Session, format: ExportFormat): Promise<void> {
  const { routeId } = openRouteOf(session);
  const reply = await session.host.call("export.file", { routeId, format });
  if (!reply.ok) return showFault(session, reply.fault);
  const { fileName, contentBase64 } = reply.value;
  handOver(fileName, await fileOf(contentBase64, mediaTypes[format]));
  tell(session, words.exported(fileName));
}

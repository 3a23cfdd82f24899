import { FileSpreadsheet, Globe, type LucideIcon, MapPin, PencilRuler } from "lucide-react";
import { type ExportFormat, exportFormats } from "../../../core/contract/exportMethods.ts";
import { exportRoute } from "../exporting.ts";
import { type Action, action, waiting } from "./action.ts";
import { exportWords, topicWords } from "./words.ts";

const icons: Readonly<Record<ExportFormat, LucideIcon>> = {
  xlsx: FileSpreadsheet,
  dxf: PencilRuler,
  kml: Globe,
  geojson: MapPin,
};

/** Id of the action that exports to a kind of file. */
export function exportActionId(format: ExportFormat): string {
  return `export-${format}`;
}

/** The route as files for other programs. */
export const exportActions: readonly Action[] = exportFormats.map((format) =>
  action(exportActionId(format), {
    name: () => exportWords[format],
    icon: icons[format],
    blocked: waiting,
    run: (s) => exportRoute(s, format),
    topic: topicWords.file,
    isWritten: true,
  }),
);

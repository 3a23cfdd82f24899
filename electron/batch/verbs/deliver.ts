import { fail, ok, type Result } from "../../../core/model/result.ts";
import { deliveryOf } from "../../host/delivery.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { writeFolder } from "../../host/writeFolder.ts";
import { writeOut } from "../../host/writeOut.ts";
import { zipped } from "../../host/zipped.ts";
import { type Outcome, readArguments, type Verb } from "../verb.ts";

const shape = { name: "deliver", usage: "FILE.strand --out FOLDER | FILE.zip" };

/** Hands a closed-out route over. */
export const deliverVerb: Verb = {
  ...shape,
  help: "Writes all that is handed over of a route: the set as built with redlines, the closeout report, its tables as XLSX, DXF, GeoJSON, traces, photos, the route file, and a manifest with the SHA-256 of each; into a folder, or one archive where the name ends in .zip.",
  async run(args, desk) {
    const read = readArguments(shape, args, ["a FILE"], { out: { type: "string" } });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const { out } = values;
    if (out === undefined)
      return fail(
        "bad-arguments",
        "The delivery has no place to go.",
        shape.name,
        `Write: strandwright deliver ${shape.usage}`,
      );
    return withRouteFile(positionals[0] ?? "", desk.stamp, async (session): Promise<Result<Outcome>> => {
      const watch = { onProgress: () => {}, signal: new AbortController().signal };
      const files = await deliveryOf(session, desk.runJob, watch);
      if (!files.ok) return files;
      const written = /\.zip$/i.test(out)
        ? writeOut(out, zipped(files.value, { isPacked: false }))
        : writeFolder(out, files.value);
      if (!written.ok) return written;
      const { path, byteCount } = written.value;
      const lines = [
        `Delivered ${files.value.length} files to ${path} (${byteCount} bytes)`,
        ...files.value.map(({ name }) => `  ${name}`),
      ];
      return ok({ exitCode: 0, lines, json: { path, byteCount, files: files.value.map(({ name }) => name) } });
    });
  },
};

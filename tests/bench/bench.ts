import { cpus } from "node:os";
import { join } from "node:path";
import { benchDraw } from "./draw.ts";
import { benchLabels } from "./labels.ts";
import { longRoute } from "./longRoute.ts";
import { type Figures, rounded } from "./measure.ts";
import { benchOpen } from "./open.ts";
import { benchPackets } from "./packets.ts";
import { benchPlacement } from "./placementRow.ts";
import { benchRecheck } from "./recheck.ts";
import { benchStatics } from "./statics.ts";
import { benchTraces } from "./traces.ts";

const assetsFolder = join(import.meta.dirname, "..", "..", "assets");

const short = longRoute(assetsFolder, 1_000);
const long = longRoute(assetsFolder, 10_000);
const figures: Figures = {
  ...(await benchOpen(long)),
  ...(await benchRecheck(short, long)),
  ...benchStatics(long),
  ...benchPlacement(),
  ...(await benchTraces(long)),
  ...benchPackets(long),
  ...(await benchDraw(longRoute(assetsFolder, 48))),
  ...benchLabels((poleCount) => longRoute(assetsFolder, poleCount)),
};
const printed = Object.fromEntries(Object.entries(figures).map(([name, value]) => [name, rounded(value)]));

if (process.argv.includes("--json")) console.log(JSON.stringify(printed));
else {
  console.log(`Node ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? "unknown"}; one run, medians.`);
  for (const [name, value] of Object.entries(printed)) console.log(`${name.padEnd(36)} ${value}`);
}

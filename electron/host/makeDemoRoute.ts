import { renameSync, rmSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { demoSeed, makeDemo } from "../../assets/demo/makeDemo.ts";
import { demoPlace } from "../../assets/demo/place.ts";
import type { ImportChoices } from "../../core/exchange/importOptions.ts";
import { type Result, refused } from "../../core/model/result.ts";
import { importLabel, planFile } from "./importFile.ts";
import type { RunJob } from "./jobs.ts";
import { layOutRoute } from "./layOutRoute.ts";
import { createRoute, openRoute } from "./openRoute.ts";
import type { Session, Stamp } from "./session.ts";
import { surveyDemo } from "./surveyDemo.ts";

/** Makes the demo route file the way a person would: four lists through the importers, then the layout and the survey notes. It has its name only when whole. */
export async function makeDemoRoute(
  path: string,
  assetsFolder: string,
  stamp: Stamp,
  runJob: RunJob,
  nativeFolder?: string,
): Promise<Result<Session>> {
  const { routeName, project, place, county, company } = demoPlace;
  const unfinished = join(dirname(path), `unfinished-${basename(path)}`);
  rmSync(unfinished, { force: true });
  const made = createRoute(unfinished, assetsFolder, { routeName, project, place, county, company }, stamp, {
    nativeFolder,
  });
  if (!made.ok) return made;
  const filled = await fill(made.value, runJob).finally(made.value.close);
  if (!filled.ok) {
    rmSync(unfinished);
    return filled;
  }
  renameSync(unfinished, path);
  return openRoute(path, stamp, nativeFolder);
}

async function fill(session: Session, runJob: RunJob): Promise<Result<unknown>> {
  const texts = makeDemo(demoSeed);
  const lists: readonly (readonly [ImportChoices["kind"], keyof typeof texts])[] = [
    ["pole", "poles"],
    ["livingUnit", "addresses"],
    ["attachment", "attachments"],
    ["crossing", "crossings"],
  ];
  for (const [kind, name] of lists) {
    const taken = await takeList(session, kind, `${name}.csv`, texts[name]);
    if (!taken.ok) return taken;
  }
  const laidOut = await layOutRoute(session, runJob);
  return laidOut.ok ? surveyDemo(session) : laidOut;
}

async function takeList(
  session: Session,
  kind: ImportChoices["kind"],
  name: string,
  text: string,
): Promise<Result<unknown>> {
  const file = { name, bytes: new TextEncoder().encode(text) };
  const planned = await planFile(session.route(), file, { kind, onBad: "refuse", onExisting: "skip" });
  if (!planned.ok) return planned;
  if (planned.value.problem !== null) return refused(planned.value.problem);
  return session.take(importLabel(kind, name), planned.value.plan.rows);
}

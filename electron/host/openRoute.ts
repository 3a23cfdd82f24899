import { isTampered } from "../../core/closeout/signatures.ts";
import { applyChange } from "../../core/edits/change.ts";
import { findCommand } from "../../core/edits/register.ts";
import { fail, type Result, refused } from "../../core/model/result.ts";
import type { Route } from "../../core/model/route.ts";
import type { Settings } from "../../core/model/tables.ts";
import { createRouteFile } from "../../db/createRouteFile.ts";
import { keepFile } from "../../db/keptFiles.ts";
import { lookInto } from "../../db/lookInto.ts";
import { openRouteFile } from "../../db/openRouteFile.ts";
import { newRoute } from "./newRoute.ts";
import { openSession, type Session, type Stamp } from "./session.ts";
import { type ReadTemplate, readTemplate, type TemplateFile } from "./templates.ts";

/** Opens a route file for work. */
export function openRoute(path: string, stamp: Stamp, nativeFolder?: string): Result<Session> {
  const file = openRouteFile(path, opening(stamp, nativeFolder));
  return file.ok ? openSession(file.value, stamp) : file;
}

/** Opens a route file for work, or for looking only where somebody else has it, it may not be written to, or was changed by other means. */
export function openOrLook(path: string, stamp: Stamp, nativeFolder?: string): Result<Session> {
  const opened = openRoute(path, stamp, nativeFolder);
  if (opened.ok || !(["locked", "read-only"].includes(opened.fault.code) || isTampered(opened.fault))) return opened;
  const looked = lookInto(path, opening(stamp, nativeFolder));
  return looked.ok ? openSession(looked.value, stamp, opened.fault) : refused(opened.fault);
}

/** Settings a new route starts with, as a person gave them; the settings edit holds them to their schema. */
export type FirstSettings = Pick<Settings, "routeName"> & { readonly [K in keyof Settings]?: unknown };

type Start = {
  readonly nativeFolder?: string | undefined;
  /** Standards, catalogues and logo it starts with in place of the program's. */
  readonly template?: ReadTemplate;
};

/** Makes a route file with the catalogues and the settings given, and opens it for work; no file where a setting is wrong. */
export function createRoute(
  path: string,
  assetsFolder: string,
  values: FirstSettings,
  stamp: Stamp,
  { nativeFolder, template }: Start = {},
): Result<Session> {
  if (!path.endsWith(".strand"))
    return fail("bad-name", "A route file's name ends in .strand.", path, `Name it ${path}.strand.`);
  const start = newRoute(assetsFolder, { routeName: values.routeName });
  const changed = applyChange(start, { rows: template?.rows ?? [] });
  const route = changed.ok ? withSettings(changed.value, values) : changed;
  if (!route.ok) return route;
  const file = createRouteFile(path, route.value, opening(stamp, nativeFolder));
  if (!file.ok) return file;
  if (template?.logo) keepFile(file.value.db, template.logo);
  return openSession(file.value, stamp);
}

/** Makes a route file that starts with a template. Faults: those of readTemplate and createRoute. */
export async function createFromTemplate(
  path: string,
  assetsFolder: string,
  values: FirstSettings,
  template: TemplateFile,
  stamp: Stamp,
  nativeFolder?: string,
): Promise<Result<Session>> {
  const read = await readTemplate(newRoute(assetsFolder, { routeName: values.routeName }), template);
  return read.ok ? createRoute(path, assetsFolder, values, stamp, { nativeFolder, template: read.value }) : read;
}

function withSettings(route: Route, values: FirstSettings): Result<Route> {
  const command = findCommand("settings.set");
  if (!command) throw new Error("the edit that sets settings is not registered");
  const asked = command.ask(route, { values });
  return asked.ok ? applyChange(route, asked.value) : asked;
}

/** Opens a route file, works on it and closes it, whatever the work comes to. */
export async function withRouteFile<T>(
  path: string,
  stamp: Stamp,
  work: (session: Session) => Result<T> | Promise<Result<T>>,
): Promise<Result<T>> {
  const session = openRoute(path, stamp);
  if (!session.ok) return session;
  try {
    return await work(session.value);
  } finally {
    session.value.close();
  }
}

function opening(stamp: Stamp, nativeFolder?: string) {
  const signed = { author: stamp.author, atIso: stamp.nowIso() };
  return nativeFolder === undefined ? signed : { ...signed, nativeFolder };
}

import type { Result } from "../../core/model/result.ts";
import type { Settings } from "../../core/model/tables.ts";
import { createRouteFile } from "../../db/createRouteFile.ts";
import { openRouteFile } from "../../db/openRouteFile.ts";
import { newRoute } from "./newRoute.ts";
import { openSession, type Session, type Stamp } from "./session.ts";

/** Opens a route file for work. */
export function openRoute(path: string, stamp: Stamp, nativeFolder?: string): Result<Session> {
  const file = openRouteFile(path, opening(stamp, nativeFolder));
  return file.ok ? openSession(file.value, stamp) : file;
}

/** Makes a route file with the catalogues and the default settings, and opens it for work. */
export function createRoute(
  path: string,
  assetsFolder: string,
  values: Pick<Settings, "routeName"> & Partial<Settings>,
  stamp: Stamp,
): Result<Session> {
  const file = createRouteFile(path, newRoute(assetsFolder, values), opening(stamp));
  return file.ok ? openSession(file.value, stamp) : file;
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

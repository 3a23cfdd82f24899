import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { Route } from "../../core/model/route.ts";
import { createRouteFile } from "../../db/createRouteFile.ts";
import { openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { openOrLook, openRoute } from "../../electron/host/openRoute.ts";
import { proofOf } from "../../electron/host/proof.ts";
import type { Session } from "../../electron/host/session.ts";
import { smallRoute } from "../fixtures/route/buildRoute.ts";
import { closedOut } from "../fixtures/route/closedOut.ts";
import { faultCode, granted, opening } from "./db/scratch.ts";

const stamp = { author: "R. Field", nowIso: () => opening.atIso };
const signing = { signOffId: "sign-1", by: "Ann", role: "Engineer", note: "", atIso: opening.atIso };
const reopening = {
  revisionId: "revision-R1",
  letter: "R1",
  by: "Ann",
  reason: "A pole was moved",
  atIso: opening.atIso,
};
const noted = { table: "pole", id: "pole-1", values: { note: "leans" } };

async function withSession(route: Route, work: (session: Session, path: string) => unknown): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "strand-signed-"));
  const path = join(folder, "town.strand");
  granted(createRouteFile(path, route, opening)).close();
  const session = granted(openRoute(path, stamp));
  try {
    await work(session, path);
  } finally {
    session.close();
    rmSync(folder, { recursive: true });
  }
}

test("a frozen route is refused every edit at every door until it is opened again", async () => {
  await withSession(closedOut(smallRoute()), async (session) => {
    granted(session.run("row.set", noted));
    granted(session.run("signOff.sign", { ...signing, stage: "accepted" }));
    const rows = [{ table: "pole", id: "pole-9", before: null, after: null }] as const;
    for (const refused of [
      session.run("row.set", { ...noted, values: { note: "straight" } }),
      session.take("Bring in poles", rows),
      session.undo(),
      session.redo(),
    ])
      expect(faultCode(refused)).toBe("frozen");
    const host = openHost({ runJob: runJobHere, report: () => {} });
    const routeId = host.add(session);
    const kept = await host.call("kept.keep", { routeId, bytesBase64: "AAAA" });
    expect(kept).toMatchObject({ fault: { code: "frozen" } });
    granted(session.run("signOff.reopen", reopening));
    expect(faultCode(session.undo())).toBe("signed");
    granted(session.run("row.set", { ...noted, values: { note: "straight" } }));
    granted(session.undo());
    expect(faultCode(session.undo())).toBe("signed");
    expect(proofOf(session)).toMatchObject({ broken: null, entryCount: 5 });
  });
});

test("what was edited before a signature is no longer taken back", async () => {
  await withSession(closedOut(smallRoute()), (session) => {
    granted(session.run("row.set", noted));
    granted(session.run("signOff.sign", { ...signing, stage: "built" }));
    expect(faultCode(session.undo())).toBe("signed");
    granted(session.run("row.set", { ...noted, values: { note: "straight" } }));
    expect(proofOf(session).broken).toBeNull();
  });
});

test("a file somebody changed behind a signature opens to be looked at, with what was changed", async () => {
  await withSession(closedOut(smallRoute()), (session, path) => {
    granted(session.run("signOff.sign", { ...signing, stage: "built" }));
    session.file.db.run("UPDATE reading SET value = value + 1 WHERE what = 'offset'");
    session.close();
    const looked = granted(openOrLook(path, stamp));
    expect(looked.lookOnly).toMatchObject({ code: "rows-changed" });
    expect(looked.lookOnly?.what).toContain("Ann signed for as built");
    expect(faultCode(looked.run("row.set", noted))).toBe("rows-changed");
    expect(looked.route().reading.size).toBeGreaterThan(0);
    looked.close();
  });
});

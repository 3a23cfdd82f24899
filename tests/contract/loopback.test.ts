import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Host } from "../../electron/host/host.ts";
import { type Loopback, openLoopback } from "../../electron/loopback/server.ts";

const folder = mkdtempSync(join(tmpdir(), "window-"));
writeFileSync(join(folder, "index.html"), "<title>window</title>");
const calls: (readonly [method: string, body: unknown])[] = [];
const host: Host = {
  call: async (method, body) => {
    calls.push([method, body]);
    return { ok: true, value: 1 };
  },
  on: () => () => {},
  add: () => "route-1",
  close: () => {},
};
let loopback: Loopback;

beforeAll(async () => {
  loopback = await openLoopback(host, folder);
});
afterAll(async () => {
  await loopback.close();
  rmSync(folder, { recursive: true });
});

type Asked = {
  readonly path: string;
  readonly method?: string;
  readonly headers?: Record<string, string>;
  readonly body?: string;
};

/** Asks the server as a program could that sets every header itself. */
function ask({ path, method = "GET", headers = {}, body = "" }: Asked) {
  const { hostname, port } = new URL(loopback.url);
  return new Promise<{ status: number; cookie: string; location: string; policy: string; text: string }>(
    (resolve, reject) => {
      const call = request({ hostname, port, path, method, headers }, (response) => {
        let text = "";
        response.on("data", (part) => {
          text += part;
        });
        response.on("end", () =>
          resolve({
            status: response.statusCode ?? 0,
            cookie: response.headers["set-cookie"]?.[0] ?? "",
            location: response.headers.location ?? "",
            policy: String(response.headers["content-security-policy"]),
            text,
          }),
        );
      });
      call.on("error", reject);
      call.end(body);
    },
  );
}

async function cookie(): Promise<string> {
  const { search } = new URL(loopback.url);
  return (await ask({ path: `/${search}` })).cookie.split(";")[0] ?? "";
}

test("the printed address trades its token for a cookie and leaves the address", async () => {
  const { search } = new URL(loopback.url);
  const first = await ask({ path: `/${search}` });
  expect(first.status).toBe(302);
  expect(first.location).toBe("/");
  expect(first.cookie).toMatch(/HttpOnly; SameSite=Strict/);
  const page = await ask({ path: "/", headers: { cookie: await cookie() } });
  expect(page.text).toContain("<title>window</title>");
  expect(page.policy).toContain("default-src 'self'");
});

test("without the token nothing is served", async () => {
  expect((await ask({ path: "/" })).status).toBe(401);
  expect((await ask({ path: "/?token=guess" })).status).toBe(401);
  expect((await ask({ path: "/events" })).status).toBe(401);
});

test("another host name is refused, so that no foreign name can be pointed here", async () => {
  expect((await ask({ path: "/", headers: { host: "example.org", cookie: await cookie() } })).status).toBe(403);
});

test("a call needs the cookie and a page of ours", async () => {
  const { origin } = new URL(loopback.url);
  const headers = { cookie: await cookie() };
  const call = { path: "/call/route.list", method: "POST", body: "{}" };
  expect((await ask({ ...call, headers })).status).toBe(403);
  expect((await ask({ ...call, headers: { ...headers, origin: "http://example.org" } })).status).toBe(403);
  expect((await ask({ ...call, headers: { origin } })).status).toBe(401);
  const lists = () => calls.filter(([method]) => method === "route.list");
  expect(lists()).toEqual([]);
  expect(JSON.parse((await ask({ ...call, headers: { ...headers, origin } })).text)).toEqual({ ok: true, value: 1 });
  expect(lists()).toEqual([["route.list", {}]]);
});

test("a body that is not JSON is a fault in plain words", async () => {
  const { origin } = new URL(loopback.url);
  const reply = await ask({
    path: "/call/route.list",
    method: "POST",
    body: "{",
    headers: { cookie: await cookie(), origin },
  });
  expect(JSON.parse(reply.text)).toMatchObject({ ok: false, fault: { code: "bad-request" } });
});

test("an address that is none is refused and a sender who goes away is let go, and the window is still served", async () => {
  const { origin, port } = new URL(loopback.url);
  const headers = { cookie: await cookie(), origin };
  expect((await ask({ path: "http://[bad", headers })).status).toBe(400);
  await new Promise<void>((resolve) => {
    const whole = { ...headers, "content-length": "100" };
    const call = request({ hostname: "127.0.0.1", port, path: "/call/route.list", method: "POST", headers: whole });
    call.on("error", () => resolve());
    call.write("{", () => call.destroy(new Error("gone")));
  });
  expect((await ask({ path: "/", headers })).status).toBe(200);
});

test("no path leads out of the window's folder", async () => {
  const headers = { cookie: await cookie() };
  expect((await ask({ path: "/%2e%2e/%2e%2e/etc/hostname", headers })).status).toBe(404);
  expect((await ask({ path: "/%ff", headers })).status).toBe(404);
});

import { randomBytes } from "node:crypto";
import { readFile } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { extname, join, normalize, sep } from "node:path";
import { fail } from "../../core/model/result.ts";
import { readDressedPage } from "../host/dressedPage.ts";
import type { Host } from "../host/host.ts";
import { addressAsked, admit } from "./gate.ts";

/** The host over 127.0.0.1, for a browser window where Electron is absent. */
export type Loopback = {
  /** Address to open, this run's token included. */
  readonly url: string;
  readonly port: number;
  /** Settles when the last window has been gone for the grace time, having been there before. */
  readonly lastWindowGone: Promise<void>;
  readonly close: () => Promise<void>;
};

const bodyLimitBytes = 64 * 1024 * 1024;
const graceMs = 5_000;

const kinds: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".png": "image/png",
};

const contentPolicy =
  "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; frame-ancestors 'none'";

/**
 * Serves the window and the contract on a port of 127.0.0.1.
 *
 * @param windowFolder  the built window
 * @param wantedPort  the port of the last start, so that a page left open finds the program again; a free one where it is taken
 */
export async function openLoopback(host: Host, windowFolder: string, wantedPort = 0): Promise<Loopback> {
  const token = randomBytes(24).toString("base64url");
  const windows = new Set<ServerResponse>();
  let grace: NodeJS.Timeout | undefined;
  let tellGone: () => void = () => {};
  const lastWindowGone = new Promise<void>((resolve) => {
    tellGone = resolve;
  });

  const server = createServer((request, response) => {
    const authority = `127.0.0.1:${portOf(server.address())}`;
    const admission = admit(request, token, authority);
    response.setHeader("Content-Security-Policy", contentPolicy);
    response.setHeader("X-Content-Type-Options", "nosniff");
    response.setHeader("Referrer-Policy", "no-referrer");
    response.setHeader("Cache-Control", "no-store");
    if (admission.kind === "refused")
      return send(response, admission.status, "text/plain; charset=utf-8", admission.words);
    const url = addressAsked(request, authority) ?? new URL(`http://${authority}/`);
    if (admission.kind === "trade") {
      url.searchParams.delete("token");
      response.setHeader("Set-Cookie", admission.cookie);
      response.setHeader("Location", `${url.pathname}${url.search}`);
      return send(response, 302, "text/plain; charset=utf-8", "");
    }
    if (url.pathname === "/events") return listen(response);
    if (request.method === "POST" && url.pathname.startsWith("/call/")) {
      return void answer(host, url.pathname.slice("/call/".length), request, response);
    }
    return void serveFile(host, windowFolder, url.pathname, response);
  });

  const listen = (response: ServerResponse): void => {
    response.writeHead(200, { "Content-Type": "text/event-stream" });
    response.write(":\n\n");
    windows.add(response);
    clearTimeout(grace);
    response.on("close", () => {
      windows.delete(response);
      if (windows.size === 0) grace = setTimeout(tellGone, graceMs);
    });
  };
  const silence = host.on((event) => {
    for (const window of windows) window.write(`data: ${JSON.stringify(event)}\n\n`);
  });

  const port = await listenOn(server, wantedPort).catch(() => listenOn(server, 0));
  return {
    port,
    url: `http://127.0.0.1:${port}/?token=${token}`,
    lastWindowGone,
    async close() {
      clearTimeout(grace);
      silence();
      for (const window of windows) window.end();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

async function answer(host: Host, method: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const body = await readBody(request);
  const reply =
    body === null
      ? fail("bad-request", "The request is too large or is not JSON.", method, "Try again with a smaller file.")
      : await host.call(method, body.json);
  send(response, 200, "application/json; charset=utf-8", JSON.stringify(reply));
}

/** Null where the body is too large, is not JSON, or its sender went away before its end. */
async function readBody(request: IncomingMessage): Promise<{ readonly json: unknown } | null> {
  const parts: Buffer[] = [];
  let lengthBytes = 0;
  try {
    for await (const part of request) {
      lengthBytes += part.length;
      if (lengthBytes > bodyLimitBytes) return null;
      parts.push(part);
    }
    return { json: JSON.parse(Buffer.concat(parts).toString("utf8")) };
  } catch {
    return null;
  }
}

async function serveFile(host: Host, folder: string, pathname: string, response: ServerResponse): Promise<void> {
  try {
    const path = normalize(join(folder, pathname === "/" ? "index.html" : decodeURIComponent(pathname)));
    if (!path.startsWith(folder + sep)) throw new Error("outside the window's folder");
    const body = await (extname(path) === ".html" ? readDressedPage(path, host.call) : readFile(path));
    send(response, 200, kinds[extname(path)] ?? "application/octet-stream", body);
  } catch {
    send(response, 404, "text/plain; charset=utf-8", "Not here.");
  }
}

function send(response: ServerResponse, status: number, kind: string, body: string | Buffer): void {
  response.writeHead(status, { "Content-Type": kind });
  response.end(body);
}

function listenOn(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => {
      server.off("error", reject);
      resolve(portOf(server.address()));
    });
  });
}

function portOf(address: ReturnType<ReturnType<typeof createServer>["address"]>): number {
  return typeof address === "object" && address !== null ? address.port : 0;
}

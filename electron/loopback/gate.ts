import { timingSafeEqual } from "node:crypto";
import type { IncomingMessage } from "node:http";

const cookieName = "strandwright";

/** What the gate lets a request do. */
export type Admission =
  | { readonly kind: "in" }
  /** The first visit: the token becomes a cookie and leaves the address. */
  | { readonly kind: "trade"; readonly cookie: string }
  | { readonly kind: "refused"; readonly status: 400 | 401 | 403; readonly words: string };

/** The address a request asks for, or null where it is none. */
export function addressAsked(request: IncomingMessage, authority: string): URL | null {
  const base = `http://${authority}`;
  const asked = request.url ?? "/";
  return URL.canParse(asked, base) ? new URL(asked, base) : null;
}

/**
 * Decides whether a request may pass: only this machine, only this run's token, only pages this host served.
 *
 * @param token  the random token of this run
 * @param authority  host and port this server answers to, such as "127.0.0.1:40123"
 */
export function admit(request: IncomingMessage, token: string, authority: string): Admission {
  if (request.headers.host !== authority) {
    return { kind: "refused", status: 403, words: "This address is not the one the program answers to." };
  }
  const { origin } = request.headers;
  if (origin !== undefined && origin !== `http://${authority}`) {
    return { kind: "refused", status: 403, words: "A page from elsewhere may not call the program." };
  }
  if (request.method === "POST" && origin === undefined) {
    return { kind: "refused", status: 403, words: "The call does not say which page it comes from." };
  }
  const url = addressAsked(request, authority);
  if (url === null) return { kind: "refused", status: 400, words: "The request asks for no address." };
  if (same(cookieOf(request), token)) return { kind: "in" };
  if (request.method === "GET" && url.pathname === "/" && same(url.searchParams.get("token") ?? "", token)) {
    return { kind: "trade", cookie: `${cookieName}=${token}; HttpOnly; SameSite=Strict; Path=/` };
  }
  return { kind: "refused", status: 401, words: "Open the address the program printed; it carries this run's token." };
}

function cookieOf(request: IncomingMessage): string {
  const cookies = (request.headers.cookie ?? "").split(";").map((one) => one.trim());
  return cookies.find((one) => one.startsWith(`${cookieName}=`))?.slice(cookieName.length + 1) ?? "";
}

function same(a: string, b: string): boolean {
  const left = Buffer.from(a);
  const right = Buffer.from(b);
  return left.length === right.length && timingSafeEqual(left, right);
}

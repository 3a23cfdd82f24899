import type { z } from "zod";
import {
  answerSchema,
  contract,
  type HostEvent,
  hostEvent,
  type Method,
  type Reply,
  type Request,
} from "../../core/contract/contract.ts";
import { fail, type Result } from "../../core/model/result.ts";
import { words } from "./words.ts";

/** The one way from the page to the host: calls that answer with a Result, and what the host says unasked. */
export type HostClient = {
  readonly call: <M extends Method>(method: M, body: Request<M>) => Promise<Result<Reply<M>>>;
  /** Listens until the function it answers with is called. */
  readonly on: (listener: (event: HostEvent) => void) => () => void;
  /** Told when the host goes away and when it is back, where it can do so while the page stays. */
  readonly onLink?: (listener: (isUp: boolean) => void) => void;
};

/** What carries calls and events: the desktop bridge or the loopback server. */
type Carrier = {
  readonly call: (method: string, body: unknown) => Promise<unknown>;
  readonly on: (listener: (event: unknown) => void) => () => void;
  readonly onLink?: (listener: (isUp: boolean) => void) => void;
};

declare global {
  interface Window {
    readonly strandwrightHost?: Carrier;
  }
}

/** The host of this window: over the desktop bridge where there is one, else over the loopback address it came from. */
export function connectHost(): HostClient {
  return hostOver(window.strandwrightHost ?? loopbackCarrier());
}

/** A host client over a carrier; every answer and event is checked against the contract before the page sees it. */
export function hostOver(carrier: Carrier): HostClient {
  return {
    ...(carrier.onLink ? { onLink: carrier.onLink } : {}),
    async call<M extends Method>(method: M, body: Request<M>): Promise<Result<Reply<M>>> {
      try {
        return readAnswer(method, await carrier.call(method, body));
      } catch {
        return fail("host-away", words.hostAway.what, method, words.hostAway.mend);
      }
    },
    on: (listener) =>
      carrier.on((raw) => {
        const event = hostEvent.safeParse(raw);
        if (event.success) listener(event.data);
      }),
  };
}

function readAnswer<M extends Method>(method: M, raw: unknown): Result<Reply<M>> {
  const answer = answerSchema.safeParse(raw);
  if (!answer.success) return strangeAnswer(method);
  if (!answer.data.ok) return answer.data;
  const schema: z.ZodType = contract[method].reply;
  const value = schema.safeParse(answer.data.value);
  return value.success ? { ok: true, value: value.data as Reply<M> } : strangeAnswer(method); // the schema just parsed is method's own
}

function strangeAnswer<T>(method: string): Result<T> {
  return fail("strange-answer", words.strangeAnswer.what, method, words.strangeAnswer.mend);
}

const againMs = 2000;
/** Longest call, in letters, that outlives its page; a browser keeps 64 KiB of them at once. */
const longestOutliving = 4000;

function loopbackCarrier(): Carrier {
  const listeners = new Set<(event: unknown) => void>();
  const linkListeners = new Set<(isUp: boolean) => void>();
  const tellLink = (isUp: boolean): void => {
    for (const listener of linkListeners) listener(isUp);
  };
  const listen = (): void => {
    const source = new EventSource("/events");
    source.onopen = () => tellLink(true);
    source.onerror = () => {
      tellLink(false);
      // a refusal ends it for good; a line that broke is tried again by the browser itself
      if (source.readyState === EventSource.CLOSED) setTimeout(listen, againMs);
    };
    source.onmessage = (message: MessageEvent<string>) => {
      const event: unknown = JSON.parse(message.data);
      for (const listener of listeners) listener(event);
    };
  };
  listen();
  return {
    onLink: (listener) => void linkListeners.add(listener),
    async call(method, body) {
      const text = JSON.stringify(body);
      const response = await fetch(`/call/${method}`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: text,
        // an edit asked for just before the page goes still arrives
        keepalive: text.length < longestOutliving,
      });
      const answer: unknown = await response.json();
      return answer;
    },
    on(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
}

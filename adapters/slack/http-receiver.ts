import type { IncomingMessage } from "node:http";
import { AuthorizationError, HTTPReceiver } from "@slack/bolt";
import { type DoorLog, toBoltLogger } from "./door-log.ts";
import { EVENTS_PATH } from "./slack-server.ts";

export interface SignedReceiver {
  readonly receiver: HTTPReceiver;
  readonly listener: HTTPReceiver["requestListener"];
  /** True once Bolt found the request's signature right. */
  readonly isVerified: (request: IncomingMessage) => boolean;
}

/** A press of a button carries its whole message along, some 100,000 bytes at most: own limit [bytes]. */
const MOST_BODY_bytes = 1_000_000;

/** Bolt's receiver without its server: checks signatures, reads bodies, answers errors with a status and no words. */
export function createHttpReceiver(signingSecret: string, log: DoorLog): SignedReceiver {
  const verified = new WeakSet<IncomingMessage>();
  const receiver = new HTTPReceiver({
    signingSecret,
    endpoints: EVENTS_PATH,
    bodyLimit: MOST_BODY_bytes,
    logger: toBoltLogger(log),
    // Bolt asks for these after it has found the signature right, and only then.
    customPropertiesExtractor: (request) => {
      verified.add(request);
      return {};
    },
    processEventErrorHandler: async ({ error, response }) => {
      log.error({ error }, "a request failed");
      if (!response.headersSent) response.writeHead(error instanceof AuthorizationError ? 401 : 500).end();
      return true;
    },
  });
  return { receiver, listener: receiver.requestListener, isVerified: (request) => verified.has(request) };
}

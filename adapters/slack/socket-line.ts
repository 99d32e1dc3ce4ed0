import { type App, AuthorizationError, type Receiver, SocketModeReceiver } from "@slack/bolt";
import { type DoorLog, toBoltLogger } from "./door-log.ts";
import { slackFetch } from "./slack-fetch.ts";
import { type Wait, withinTime } from "./wait.ts";

/** Whether Slack can reach us right now. */
export type LineState = "connecting" | "open" | "closed";

interface Connected {
  /** Resolves when the socket is gone. */
  readonly lost: Promise<void>;
}
/** The socket over which Slack sends everything. */
export interface SocketLine extends Receiver {
  readonly init: (app: App) => void;
  state(): LineState;
  /** Connects, and connects again whenever the socket is lost. Throws when Slack refuses the token. */
  open(): Promise<void>;
  close(): Promise<void>;
}
export interface SocketLineSettings {
  readonly appToken: string;
  readonly log: DoorLog;
  readonly wait: Wait;
  /** Longest wait for an answer of Slack [ms] */
  readonly call_ms: number;
  readonly apiUrl?: string;
}

/** A socket that answers no ping for this long is taken for dead [ms]. */
const PONG_ms = 5_000;
/** Slack greets at once; a socket without a greeting is given up [ms]. */
const HELLO_ms = 10_000;
/** The start waits this long for the first connection, then goes on without it [ms]. */
const FIRST_ms = 3_000;
/** The farewell of a socket takes one round trip; then it is cut [ms]. */
const FAREWELL_ms = 1_000;
const FIRST_PAUSE_ms = 500;
const LONGEST_PAUSE_ms = 30_000;
/** Refusals that trying again does not mend. */
const REFUSED = /not_authed|invalid_auth|account_inactive|team_disabled|not_allowed_token_type|missing_scope/;

/**
 * Connects by itself: the library would wait its ping timeout before each new connection, and a failure while it does
 * so would end the whole process.
 */
export function createSocketLine(settings: SocketLineSettings): SocketLine {
  const { log, wait } = settings;
  const receiver = createReceiver(settings);
  const { client } = receiver;
  let state: LineState = "connecting";
  let isClosing = false;

  const connect = async (): Promise<Connected> => {
    state = "connecting";
    const connected = await connectOnce(client);
    if (isClosing) await client.disconnect();
    else state = "open";
    return connected;
  };
  const stayConnected = async (first: Promise<Connected>): Promise<void> => {
    let next: Promise<Connected> | undefined = first;
    for (let failures = 0; !isClosing; ) {
      try {
        const { lost } = await (next ?? connect());
        if (failures > 0) log.info({ failures }, "Slack is connected again");
        failures = 0;
        await lost;
      } catch (error) {
        if (isClosing) return;
        log.error({ error }, "Slack cannot be connected; trying again");
        await wait(Math.min(FIRST_PAUSE_ms * 2 ** failures, LONGEST_PAUSE_ms));
        failures += 1;
      }
      next = undefined;
    }
  };
  cutWhenRenewed(client);

  return {
    init: (app) => receiver.init(app),
    start: async () => {},
    stop: async () => {},
    state: () => state,
    async open() {
      const first = connect();
      stayConnected(first).catch((error: unknown) => {
        if (!isClosing) log.error({ error }, "Slack is not connected any more");
      });
      const refused = first.then(
        () => undefined,
        (error: unknown) => (REFUSED.test(String(error)) ? error : undefined),
      );
      const error = await withinTime(refused, FIRST_ms);
      if (error === undefined) return;
      isClosing = true;
      throw new Error("Slack refuses SLACK_APP_TOKEN; make a new app-level token with the scope connections:write", {
        cause: error,
      });
    },
    async close() {
      isClosing = true;
      await withinTime(Promise.resolve(client.disconnect()), FAREWELL_ms);
      state = "closed";
    },
  };
}

async function connectOnce(client: SocketModeReceiver["client"]): Promise<Connected> {
  let tell = () => {};
  const lost = new Promise<void>((resolve) => {
    tell = () => resolve();
  });
  client.once("disconnected", tell);
  const late = setTimeout(() => client.disconnect(), HELLO_ms);
  try {
    await client.start();
    return { lost };
  } catch (error) {
    client.off("disconnected", tell);
    throw error;
  } finally {
    clearTimeout(late);
  }
}

/** Slack announces that it renews the connection, and closes it; where its side does not, the socket is cut. */
function cutWhenRenewed(client: SocketModeReceiver["client"]): void {
  client.on("ws_message", (data: unknown) => {
    if (typeof data !== "string" || !/"type":\s*"disconnect"/.test(data)) return;
    const old = client.websocket;
    setTimeout(() => old?.readyState !== undefined && old.disconnect(), FAREWELL_ms).unref();
  });
}

function createReceiver({ appToken, log, call_ms, apiUrl }: SocketLineSettings): SocketModeReceiver {
  return new SocketModeReceiver({
    appToken,
    logger: toBoltLogger(log),
    autoReconnectEnabled: false,
    clientPingTimeout: PONG_ms,
    // What failed is not acknowledged, so that Slack sends it again; where the app is not installed, that helps nobody.
    processEventErrorHandler: async ({ error }) => {
      log.error({ error }, "a request failed");
      return error instanceof AuthorizationError;
    },
    installerOptions: {
      clientOptions: {
        fetch: slackFetch(call_ms),
        timeout: call_ms,
        retryConfig: { retries: 0 },
        rejectRateLimitedCalls: true,
        allowAbsoluteUrls: false,
        ...(apiUrl !== undefined && { slackApiUrl: apiUrl }),
      },
    },
  });
}

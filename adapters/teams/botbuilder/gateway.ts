import { setMaxListeners } from "node:events";
import { type Activity, CloudAdapter, TurnContext } from "botbuilder";
import { ConnectorClient } from "botframework-connector";
import { describeError } from "../describe-error.ts";
import type { FetchFile } from "../fetch-file.ts";
import { recordAt, textAt } from "../payload.ts";
import { DONE, type DoorLog, type Pause, type ServeEvent, type TeamsLine } from "../port.ts";
import { readActivity, tenantOf } from "../read-activity.ts";
import type { Patience } from "../send-patiently.ts";
import type { CheckedSettings } from "../settings.ts";
import {
  type Authentication,
  CHANNEL_ISSUER,
  dropLibraryRetries,
  openAuthentication,
  type StandIns,
} from "./connect.ts";
import { ConnectorLine } from "./connector-line.ts";
import { holdConsole } from "./quiet-console.ts";

const CHANNEL = "msteams";
/** Teams sends an activity again after about 15 s. @source Microsoft Teams, "Bot basics"; the margin is our own choice */
const LONGEST_TURN_ms = 10_000;
/** Longest wait for work in hand when the door closes. Our own choice. */
const DRAIN_ms = 5_000;

const OK: GatewayAnswer = { status: 200 };
const DAMAGED: GatewayAnswer = { status: 400 };
const UNKNOWN: GatewayAnswer = { status: 401 };
const FAILED: GatewayAnswer = { status: 500 };
const NOT_SERVED: GatewayAnswer = { status: 501 };

export interface GatewayAnswer {
  readonly status: number;
  readonly body?: object;
}

export interface GatewayParts extends StandIns {
  readonly settings: CheckedSettings;
  readonly serve: ServeEvent;
  readonly log: DoorLog;
  readonly patience: Patience;
  readonly pause: Pause;
  /** Told of every activity that the platform vouches for, whether it asks anything or not. */
  readonly notice: (activity: unknown) => void;
  /** Fetches what people sent, with the bot's token where that is asked for. */
  readonly fetchFile: (token: () => Promise<string>) => FetchFile;
}

/** Everything of the bot library: proves who sends, hands events on, and carries messages back. */
export class BotbuilderGateway {
  readonly #parts: GatewayParts;
  readonly #authentication: Authentication;
  readonly #fetchFile: FetchFile;
  readonly #adapter: CloudAdapter;
  readonly #inHand = new Set<Promise<boolean>>();
  readonly #closing = new AbortController();
  readonly #releaseConsole: () => void;

  constructor(parts: GatewayParts) {
    this.#parts = parts;
    this.#authentication = openAuthentication(parts.settings, parts);
    this.#fetchFile = parts.fetchFile(this.#authentication.token);
    this.#adapter = new CloudAdapter(this.#authentication.inbound);
    this.#releaseConsole = holdConsole();
    // Every answer that waits for a busy platform listens to it.
    setMaxListeners(0, this.#closing.signal);
  }

  /** Takes one request of the platform; the answer tells a stranger nothing but its status. */
  async receive(authorization: string, body: unknown): Promise<GatewayAnswer> {
    // The service address is what the token vouches for; the library does not compare it when it is left out.
    if (!isActivity(body)) return DAMAGED;
    // Other channels take other, weaker ways through the library, so they are turned away before it.
    if (body.channelId !== CHANNEL) return UNKNOWN;
    const proof = await this.#authenticate(authorization, body);
    if (proof === undefined || !this.#isOwnTenant(body)) return UNKNOWN;
    this.#parts.notice(body);
    return await this.#serve(proof, body);
  }

  /** Lets the work in hand finish for a while, then stops it. */
  async close(): Promise<void> {
    const drained = new AbortController();
    await Promise.race([Promise.allSettled(this.#inHand), this.#parts.pause(DRAIN_ms, drained.signal)]);
    drained.abort(DONE);
    this.#closing.abort();
    await Promise.allSettled(this.#inHand);
    this.#releaseConsole();
  }

  async #authenticate(authorization: string, activity: Activity) {
    try {
      const proof = await this.#authentication.inbound.authenticateRequest(activity, authorization);
      // Tokens of other issuers, such as those of the emulator, do not vouch for the service address.
      return proof.claimsIdentity.getClaimValue("iss") === CHANNEL_ISSUER ? proof : undefined;
    } catch (error) {
      this.#parts.log.warn(describeError(error), "a request was refused");
      return undefined;
    }
  }

  #isOwnTenant(activity: Activity): boolean {
    const { appType, tenantId } = this.#parts.settings;
    const tenant = tenantOf(activity);
    return tenant !== undefined && (appType === "MultiTenant" || tenant === tenantId);
  }

  async #serve(proof: Proof, activity: Activity): Promise<GatewayAnswer> {
    const event = readActivity(activity, this.#fetchFile);
    const isInvoke = activity.type === "invoke";
    if (event === undefined) return isInvoke ? NOT_SERVED : OK;
    const turn = new AbortController();
    let isServed = true;
    try {
      await this.#adapter.processActivityDirect(proof, activity, async (context) => {
        const work = this.#keep(this.#parts.serve(event, this.#openLine(context), this.#closing.signal));
        const limit = this.#parts.pause(LONGEST_TURN_ms, turn.signal).then(() => true);
        isServed = await Promise.race([work, limit]);
      });
    } catch (error) {
      this.#parts.log.error(describeError(error), "a turn failed");
      isServed = false;
    }
    turn.abort(DONE);
    if (!isServed) return FAILED;
    return isInvoke && event.consent === undefined ? { status: 200, body: INVOKE_DONE } : OK;
  }

  /** Holds on to work that outlasts its turn. @returns whether it was done; what failed is in the log then */
  #keep(work: Promise<void>): Promise<boolean> {
    const kept = work
      .then(() => true)
      .catch((error: unknown) => {
        this.#parts.log.error(describeError(error), "an answer was not delivered");
        return false;
      })
      .finally(() => this.#inHand.delete(kept));
    this.#inHand.add(kept);
    return kept;
  }

  #openLine(context: TurnContext): TeamsLine {
    const connector: unknown = context.turnState.get(this.#adapter.ConnectorClientKey);
    if (!(connector instanceof ConnectorClient)) throw new Error("The bot library gave no way to answer.");
    dropLibraryRetries(connector);
    return new ConnectorLine(connector, TurnContext.getConversationReference(context.activity), this.#parts.patience);
  }
}

type Proof = Awaited<ReturnType<Authentication["inbound"]["authenticateRequest"]>>;

/** What an `Action.Execute` gets back: that it was taken; the answer itself comes as a message. */
const INVOKE_DONE = { statusCode: 200, type: "application/vnd.microsoft.activity.message", value: "✓" };

function isActivity(body: unknown): body is Activity {
  return (
    ["type", "channelId", "serviceUrl"].every((key) => textAt(body, key) !== undefined) && recordAt(body) !== undefined
  );
}

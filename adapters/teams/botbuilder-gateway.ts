import { setMaxListeners } from "node:events";
import {
  type Activity,
  CloudAdapter,
  ConfigurationBotFrameworkAuthentication,
  type ConversationReference,
  TurnContext,
} from "botbuilder";
import { ConnectorClient, type ServiceClientCredentialsFactory } from "botframework-connector";
import { describeError } from "./describe-error.ts";
import { recordAt, textAt } from "./payload.ts";
import { DONE, type DoorLog, type Pause, type ServeEvent, type TeamsLine, type TeamsMessage } from "./port.ts";
import { holdConsole } from "./quiet-console.ts";
import { readActivity, tenantOf } from "./read-activity.ts";
import { type Patience, sendPatiently } from "./send-patiently.ts";
import type { CheckedSettings } from "./settings.ts";

/** Who signs what Teams sends. @source Microsoft, botframework-connector 4.23.3, AuthenticationConstants */
const CHANNEL_ISSUER = "https://api.botframework.com";
const CHANNEL = "msteams";
/** Teams sends an activity again after about 15 s. @source Microsoft Teams, "Bot basics"; the margin is our own choice */
const LONGEST_TURN_ms = 10_000;
/** Longest wait for one answer of the platform. Our own choice. */
const REQUEST_TIMEOUT_ms = 15_000;
const REQUEST_OPTIONS = { timeout: REQUEST_TIMEOUT_ms };
/** Longest wait for work in hand when the door closes. Our own choice. */
const DRAIN_ms = 5_000;
const CARD_TYPE = "application/vnd.microsoft.card.adaptive";

const OK: GatewayAnswer = { status: 200 };
const DAMAGED: GatewayAnswer = { status: 400 };
const UNKNOWN: GatewayAnswer = { status: 401 };
const FAILED: GatewayAnswer = { status: 500 };
const NOT_SERVED: GatewayAnswer = { status: 501 };

export interface GatewayAnswer {
  readonly status: number;
  readonly body?: object;
}

export interface GatewayParts {
  readonly settings: CheckedSettings;
  readonly serve: ServeEvent;
  readonly log: DoorLog;
  readonly patience: Patience;
  readonly pause: Pause;
  readonly credentials?: ServiceClientCredentialsFactory | undefined;
  readonly openIdMetadataUrl?: string | undefined;
}

/** Everything of the bot library: proves who sends, hands events on, and carries messages back. */
export class BotbuilderGateway {
  readonly #parts: GatewayParts;
  readonly #authentication: ConfigurationBotFrameworkAuthentication;
  readonly #adapter: CloudAdapter;
  readonly #inHand = new Set<Promise<boolean>>();
  readonly #closing = new AbortController();
  readonly #releaseConsole: () => void;

  constructor(parts: GatewayParts) {
    this.#parts = parts;
    const { credentials } = parts;
    this.#authentication = new ConfigurationBotFrameworkAuthentication(authenticationOptions(parts), credentials);
    this.#adapter = new CloudAdapter(this.#authentication);
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
      const proof = await this.#authentication.authenticateRequest(activity, authorization);
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
    const event = readActivity(activity);
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
    return isInvoke ? { status: 200, body: INVOKE_DONE } : OK;
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

type Proof = Awaited<ReturnType<ConfigurationBotFrameworkAuthentication["authenticateRequest"]>>;

/** What an `Action.Execute` gets back: that it was taken; the answer itself comes as a message. */
const INVOKE_DONE = { statusCode: 200, type: "application/vnd.microsoft.activity.message", value: "✓" };

function isActivity(body: unknown): body is Activity {
  return (
    ["type", "channelId", "serviceUrl"].every((key) => textAt(body, key) !== undefined) && recordAt(body) !== undefined
  );
}

/**
 * Options of the library. As soon as one of the addresses is set, it takes all others from here too and leaves the
 * missing ones blank, so they are set all together or not at all.
 */
function authenticationOptions({ settings, openIdMetadataUrl }: GatewayParts): Record<string, string> {
  const { appId, appType, tenantId, password, certificate } = settings;
  return {
    MicrosoftAppId: appId,
    MicrosoftAppType: appType,
    ...(tenantId && { MicrosoftAppTenantId: tenantId }),
    ...(password && { MicrosoftAppPassword: password }),
    ...(certificate && {
      CertificateThumbprint: certificate.thumbprint,
      CertificatePrivateKey: certificate.privateKey,
    }),
    ...(openIdMetadataUrl && {
      ToChannelFromBotLoginUrl: "https://login.microsoftonline.com/botframework.com",
      ToChannelFromBotOAuthScope: CHANNEL_ISSUER,
      ToBotFromChannelTokenIssuer: CHANNEL_ISSUER,
      OAuthUrl: CHANNEL_ISSUER,
      ToBotFromChannelOpenIdMetadataUrl: openIdMetadataUrl,
      ToBotFromEmulatorOpenIdMetadataUrl: openIdMetadataUrl,
      CallerId: "urn:botframework:azure",
    }),
  };
}

/**
 * Takes the library's own retries out of a client: they leave out 412 and a 429 without a time, and wait for any time
 * that an answer names. The client keeps its pipeline private; the exact version is pinned and a test counts attempts.
 */
function dropLibraryRetries(connector: ConnectorClient): void {
  const pipeline = recordAt(connector, "client", "pipeline");
  if (!(pipeline && "removePolicy" in pipeline && typeof pipeline.removePolicy === "function"))
    throw new Error("The bot library keeps its retries in another place than in version 4.23.3.");
  pipeline.removePolicy({ name: "defaultRetryPolicy" });
}

/** One conversation, reached through the library's client, which outlives the turn. */
class ConnectorLine implements TeamsLine {
  readonly #connector: ConnectorClient;
  readonly #reference: Partial<ConversationReference>;
  readonly #conversation: string;
  readonly #patience: Patience;

  constructor(connector: ConnectorClient, reference: Partial<ConversationReference>, patience: Patience) {
    this.#connector = connector;
    this.#reference = reference;
    this.#conversation = reference.conversation?.id ?? "";
    this.#patience = patience;
  }

  async send(message: TeamsMessage, signal: AbortSignal): Promise<string> {
    const activity = this.#address(cardActivity(message));
    const { conversations } = this.#connector;
    const sent = await this.#patiently(
      () => conversations.sendToConversation(this.#conversation, activity, REQUEST_OPTIONS),
      signal,
    );
    return sent.id;
  }

  async update(id: string, message: TeamsMessage, signal: AbortSignal): Promise<void> {
    const activity = { ...this.#address(cardActivity(message)), id };
    const { conversations } = this.#connector;
    await this.#patiently(
      () => conversations.updateActivity(this.#conversation, id, activity, REQUEST_OPTIONS),
      signal,
    );
  }

  async showTyping(): Promise<void> {
    const activity = this.#address({ type: "typing" });
    await this.#connector.conversations.sendToConversation(this.#conversation, activity, REQUEST_OPTIONS);
  }

  #address(activity: Partial<Activity>): Partial<Activity> {
    return TurnContext.applyConversationReference(activity, this.#reference);
  }

  #patiently<T>(send: () => Promise<T>, signal: AbortSignal): Promise<T> {
    return sendPatiently(send, this.#patience, signal);
  }
}

function cardActivity({ card, summary }: TeamsMessage): Partial<Activity> {
  return { type: "message", summary, attachments: [{ contentType: CARD_TYPE, content: card }] };
}

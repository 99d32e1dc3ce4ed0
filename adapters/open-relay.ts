import { randomUUID } from "node:crypto";
import type { Language } from "../src/messages/language.ts";
import type { ChatPort, Outgoing } from "../src/ports/chat.ts";
import type { FaultLog } from "../src/ports/fault-log.ts";
import type { Store } from "../src/ports/store.ts";
import type { SlackAccess } from "./open-slack-access.ts";
import type { TeamsSettings } from "./teams/settings.ts";
import { createOutboxRelay, type OutboxRelay } from "./workers/outbox-relay.ts";
import type { CompletePost } from "./workers/post-papers.ts";

interface RelaySettings {
  readonly store: Store;
  readonly faults: FaultLog;
  readonly language: Language;
  /** Left out where Slack is not set up. */
  readonly slack?: Pick<SlackAccess, "tokens">;
  /** Left out where Teams is not set up; read with the first post. */
  readonly teams?: () => Promise<TeamsSettings>;
  /** Reads the photos and papers of a post. */
  readonly readFile: (workspace: string, hash: string) => Promise<Uint8Array | undefined>;
  /** Makes the papers that go with posts. */
  readonly complete: CompletePost;
}

type Report = (error: unknown, about: Pick<Outgoing, "workspace" | "channel">) => void;

/** How often the outbox is looked into: people take no notice of a second [ms]. */
const EVERY_ms = 1_000;
/** Longest wait for an answer of Slack [ms] */
const SLACK_CALL_ms = 10_000;

/** Starts sending what stands in the outbox, until it is stopped. */
export function startRelay({
  store,
  faults,
  language,
  slack,
  teams,
  readFile,
  complete,
}: RelaySettings): Pick<OutboxRelay, "stop"> {
  const { houseChat: web } = store;
  const report: Report = (error, { workspace, channel }) =>
    faults.report({ id: randomUUID().slice(-8), doing: "post", door: channel.door, workspace, error });
  const relay = createOutboxRelay({
    outbox: store.outbox,
    ports: {
      slack: slack ? slackPosts(slack, readFile, report) : NO_SLACK,
      teams: teams ? teamsPosts(teams, store, language) : NO_TEAMS,
      web,
      terminal: web,
    },
    clock: { now_ms: Date.now },
    complete,
    language,
    jitter: Math.random,
    report: (error, { workspace, post }) => report(error, { workspace, channel: post.channel }),
  });
  relay.start(EVERY_ms);
  return relay;
}

const NO_SLACK: ChatPort = { send: async () => ({ kind: "refused", because: "Slack is not set up" }) };
const NO_TEAMS: ChatPort = { send: async () => ({ kind: "refused", because: "Teams is not set up" }) };

/** The bot library is loaded with the first post. */
function teamsPosts(access: () => Promise<TeamsSettings>, store: Store, language: Language): ChatPort {
  let loaded: Promise<ChatPort> | undefined;
  const load = async () => {
    const [{ createTeamsPosts }, { openCourier }, { checkSettings }] = await Promise.all([
      import("./teams/post-card.ts"),
      import("./teams/botbuilder/courier.ts"),
      import("./teams/settings.ts"),
    ]);
    const courier = openCourier(checkSettings(await access()));
    return createTeamsPosts({ courier, references: store.conversations, language, now_ms: Date.now });
  };
  const posts = () => {
    // A key file that cannot be read now may be there with the next try.
    loaded ??= load().catch((error: unknown) => {
      loaded = undefined;
      throw error;
    });
    return loaded;
  };
  return {
    send: async (out) => (await posts()).send(out),
    find: async (out) => (await (await posts()).find?.(out)) ?? { kind: "cannot_look" },
  };
}

/** Slack's client is loaded with the first post. */
function slackPosts(
  { tokens }: Pick<SlackAccess, "tokens">,
  readKept: RelaySettings["readFile"],
  report: Report,
): ChatPort {
  let loaded: Promise<ChatPort> | undefined;
  const load = () => {
    loaded ??= import("./slack/post-card.ts").then(({ createSlackPosts }) =>
      createSlackPosts({ tokenOf: tokens.ofWorkspace, call_ms: SLACK_CALL_ms, readKept, report }),
    );
    return loaded;
  };
  return {
    send: async (out) => (await load()).send(out),
    find: async (out) => (await (await load()).find?.(out)) ?? { kind: "cannot_look" },
  };
}

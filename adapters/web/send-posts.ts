import { createHash } from "node:crypto";
import type { Context } from "hono";
import type { ChannelReader, HouseChannel } from "../../src/desk/house-channels.ts";
import { formatMoment } from "../../src/messages/format-moment.ts";
import type { Language } from "../../src/messages/language.ts";
import { COMMON } from "../../src/messages/voice.ts";
import type { ChannelCard } from "../../src/ports/store.ts";
import { type HtmlOptions, renderHtml } from "./render-html.ts";
import { callerOf, type FindLanguage, type WebPerson } from "./web-people.ts";

/** A message of a channel as the page shows it. */
export interface SentPost {
  readonly id: string;
  readonly follows?: string;
  readonly at_ms: number;
  /** The moment where the company is, as it is read there. */
  readonly time: string;
  /** Changes with what it says, whatever the language of the page around it. */
  readonly stamp: string;
  readonly summary: string;
  /** Left out where the page has this stamp already. */
  readonly html?: string;
}
export interface SentPosts {
  /** Changes with anything in it; given back, the next answer may be empty. */
  readonly tag: string;
  readonly channels: readonly { readonly id: HouseChannel; readonly posts: readonly SentPost[] }[];
}

export interface PostParts {
  readonly people: readonly WebPerson[];
  readonly languageOf: FindLanguage;
  readonly channels?: ChannelReader;
  /** Where the company is (IANA name), and the language in which it posts. */
  readonly company: { readonly timeZone?: string; readonly language?: Language };
  /** How cards are shown to a person, but for their id and language. */
  readonly lookFor: (person: WebPerson) => Omit<HtmlOptions, "id" | "language">;
}

/** Newest messages of each channel that are shown. */
const MOST_POSTS = 60;

/** Gives a person the channels that they may read; 204 when nothing changed since the tag that the page has. */
export async function sendPosts(c: Context, parts: PostParts): Promise<Response> {
  const person = parts.people.find(({ user }) => user === c.req.query("user"));
  if (!person || !parts.channels) return c.text("Pick a name from the list.\n", 400);
  const language = await parts.languageOf(callerOf(person));
  const have = new Set((c.req.query("have") ?? "").split(","));
  const channels: SentPosts["channels"] = await Promise.all(
    (await parts.channels.openTo(callerOf(person))).map(async (id) => {
      const cards = (await parts.channels?.read(callerOf(person), id, MOST_POSTS)) ?? [];
      return { id, posts: cards.map((card) => toPost(card, person, language, have, parts)) };
    }),
  );
  const tag = digest([
    language,
    person.user,
    channels.map(({ id, posts }) => [id, posts.map(({ id: post, stamp }) => [post, stamp])]),
  ]);
  if (tag === c.req.query("tag")) return c.body(null, 204);
  return c.json({ tag, channels } satisfies SentPosts);
}

function toPost(
  { id, follows, at_ms, card }: ChannelCard,
  person: WebPerson,
  language: Language,
  have: ReadonlySet<string>,
  { company, lookFor }: PostParts,
): SentPost {
  const stamp = digest([id, card]);
  const look = { ...lookFor(person), id: `post-${stamp}`, language: company.language ?? language };
  return {
    id,
    ...(follows !== undefined && { follows }),
    at_ms,
    time: formatMoment(COMMON[language], at_ms, company.timeZone ?? "UTC"),
    stamp,
    summary: card.summary,
    ...(!have.has(stamp) && { html: renderHtml(card, look) }),
  };
}

function digest(value: unknown): string {
  return createHash("sha256").update(JSON.stringify(value)).digest("hex").slice(0, 12);
}

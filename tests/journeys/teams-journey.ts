import type { AdaptiveCard } from "../../adapters/teams/adaptive-card.ts";
import type { WebFetch } from "../../adapters/teams/fetch-file.ts";
import { openTestDoor } from "../teams/open-test-door.ts";
import { type JourneyDoor, type OpenJourneyDoor, type Shown, teamsUser } from "./journey-door.ts";
import { visibleText } from "./visible.ts";

interface Button {
  readonly label: string;
  readonly value: unknown;
  readonly card: string;
}

/** Teams: a personal chat with the bot for each person. */
export const openTeamsJourney: OpenJourneyDoor = async (desk) => {
  /** What people have put into their own storage, by its address. */
  const storage = new Map<string, Uint8Array>();
  const webFetch: WebFetch = async ({ href }) => new Response(Uint8Array.from(storage.get(href) ?? []));
  const door = await openTestDoor({ desk, webFetch });
  const { platform } = door;
  const onScreen = new Map<string, readonly Button[]>();
  let count = 0;

  const send = async (who: string, changes: object): Promise<Shown> => {
    count += 1;
    const from = platform.messages.length;
    const person = { id: `29:${who}`, name: who, aadObjectId: teamsUser(who) };
    const conversation = { id: `19:chat-${who}`, conversationType: "personal", tenantId: TENANT };
    const { status } = await door.say({ id: `m${count}`, from: person, conversation, ...changes });
    if (status !== 200) throw new Error(`Teams was answered ${status}`);
    // A card that was answered is replaced by one without buttons; what is new is posted.
    const posted = platform.messages.slice(from).filter(({ method }) => method === "POST");
    const cards = posted.flatMap(({ body, id }) => cardsOf(body).map((card) => ({ card, id })));
    const buttons = cards.flatMap(({ card, id }) => buttonsIn(card, id));
    onScreen.set(who, buttons);
    return {
      text: cards.map(({ card }) => visibleText(card.body)).join("\n"),
      buttons: buttons.map(({ label }) => label),
    };
  };
  const journey: JourneyDoor = {
    door: "teams",
    say: (who, text, photos = []) =>
      send(who, {
        text,
        ...(photos.length > 0 && {
          attachments: photos.map(({ name, bytes }) => {
            const downloadUrl = `https://storage.invalid/${storage.size + 1}`;
            storage.set(downloadUrl, bytes);
            return {
              contentType: "application/vnd.microsoft.teams.file.download.info",
              name,
              content: { downloadUrl },
            };
          }),
        }),
      }),
    press(who, label) {
      const button = (onScreen.get(who) ?? []).find((one) => one.label === label);
      if (button === undefined) throw new Error(`no button ${label} before ${who}`);
      return send(who, { text: undefined, value: button.value, replyToId: button.card });
    },
    close: () => door.close(),
  };
  return journey;
};

const TENANT = "99999999-8888-4777-8666-555555555555";

function cardsOf(body: {
  readonly attachments?: readonly { readonly content?: AdaptiveCard }[];
}): readonly AdaptiveCard[] {
  return (body.attachments ?? []).flatMap(({ content }) => (content === undefined ? [] : [content]));
}

function buttonsIn(value: unknown, card: string): readonly Button[] {
  if (Array.isArray(value)) return value.flatMap((one) => buttonsIn(one, card));
  if (typeof value !== "object" || value === null) return [];
  const own =
    "type" in value && value.type === "Action.Submit" && "title" in value && "data" in value
      ? [{ label: String(value.title), value: value.data, card }]
      : [];
  return [...own, ...Object.values(value).flatMap((one) => buttonsIn(one, card))];
}

import type { AdaptiveCard } from "../../adapters/teams/adaptive-card.ts";
import type { WebFetch } from "../../adapters/teams/fetch-file.ts";
import { TENANT_ID } from "../teams/fake-platform.ts";
import { openTestDoor } from "../teams/open-test-door.ts";
import {
  createScreens,
  type DoorParts,
  type JourneyDoor,
  type OpenJourneyDoor,
  type Shown,
  teamsUser,
} from "./journey-door.ts";
import { visibleText } from "./visible.ts";

interface Button {
  readonly label: string;
  readonly value: unknown;
  readonly card: string;
}
interface Attachment {
  readonly contentType: string;
  readonly name?: string;
  readonly content?: AdaptiveCard;
}
const CARD_TYPE = "application/vnd.microsoft.card.adaptive";

/** Teams: a personal chat with the bot for each person. */
export const openTeamsJourney: OpenJourneyDoor = async (parts) => {
  /** What people have put into their own storage, by its address. */
  const storage = new Map<string, Uint8Array>();
  const webFetch: WebFetch = async ({ href }) => {
    const bytes = storage.get(href);
    return bytes === undefined ? new Response(null, { status: 404 }) : new Response(Uint8Array.from(bytes));
  };
  const open = ({ desk, readFile }: DoorParts) => openTestDoor({ desk, readFile, webFetch });
  const screens = createScreens<Button>();
  let door = await open(parts);
  let count = 0;

  const send = async (who: string, changes: object): Promise<Shown> => {
    count += 1;
    const { platform } = door;
    const from = platform.messages.length;
    const person = { id: `29:${who}`, name: who, aadObjectId: teamsUser(who) };
    const conversation = { id: `19:chat-${who}`, conversationType: "personal", tenantId: TENANT_ID };
    const { status } = await door.say({ id: `m${count}`, from: person, conversation, ...changes });
    if (status !== 200) throw new Error(`Teams was answered ${status}`);
    // A card that was answered is replaced by one without buttons; what is new is posted.
    const posted = platform.messages.slice(from).filter(({ method }) => method === "POST");
    const seen = posted.flatMap(({ body, id }) => attachmentsOf(body).map((attachment) => ({ attachment, id })));
    return screens.show(
      who,
      seen.map(({ attachment }) => seenOf(attachment)).join("\n"),
      seen.flatMap(({ attachment, id }) => buttonsIn(attachment.content, id)),
    );
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
      const { value, card } = screens.find(who, label);
      return send(who, { text: undefined, value, replyToId: card });
    },
    async reopen(next) {
      await door.close();
      door = await open(await next());
    },
    close: () => door.close(),
  };
  return journey;
};

function attachmentsOf(body: { readonly attachments?: readonly Attachment[] }): readonly Attachment[] {
  return body.attachments ?? [];
}

function seenOf({ contentType, name = "", content }: Attachment): string {
  if (contentType !== CARD_TYPE || content === undefined) return `(file: ${name})`;
  return visibleText(content.body);
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

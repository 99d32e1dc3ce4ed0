import type { Company } from "../books/books.ts";
import type { Caller, ChannelCard, Role, Store } from "../ports/store.ts";
import { ROLES } from "../ports/store.ts";

/** Channels of our own that people read, the one for most people first. */
export const HOUSE_CHANNELS = ["team", "managers", "owner"] as const;
export type HouseChannel = (typeof HOUSE_CHANNELS)[number];

/** Who may read each. */
const READERS: Readonly<Record<HouseChannel, readonly Role[]>> = {
  team: ROLES,
  managers: ["manager", "owner"],
  owner: ["owner"],
};

/** Reads the channels of our own for a door that shows them, and hands nobody what is not for them. */
export interface ChannelReader {
  /** The channels that this caller may read. */
  openTo(caller: Caller): Promise<readonly HouseChannel[]>;
  /** The newest messages, oldest first; nothing where the caller may not read that channel. */
  read(caller: Caller, channel: HouseChannel, most: number): Promise<readonly ChannelCard[] | undefined>;
}

/**
 * Who may read what is asked of the store each time: a role may change, and two doors may be joined.
 * @param company a team that reads its posts in another chat has no channel here
 */
export function createChannelReader(store: Store, company: Pick<Company, "teamChannel">): ChannelReader {
  const kept = HOUSE_CHANNELS.flatMap((channel) => {
    const id = channel === "team" ? teamId(company) : channel;
    return id === undefined ? [] : [{ channel, id }];
  });
  const openTo = async (caller: Caller) => {
    const workspace = await store.openWorkspace(caller);
    const { role } = await workspace.findPerson(caller);
    return { workspace, open: kept.filter(({ channel }) => READERS[channel].includes(role)) };
  };
  return {
    openTo: async (caller) => (await openTo(caller)).open.map(({ channel }) => channel),
    async read(caller, channel, most) {
      const { workspace, open } = await openTo(caller);
      const found = open.find((one) => one.channel === channel);
      return found && (await workspace.channelCards(found.id, most));
    },
  };
}

/** The company may call it otherwise, but by the name of no channel that fewer people read. */
function teamId({ teamChannel }: Pick<Company, "teamChannel">): string | undefined {
  if (teamChannel === undefined) return "team";
  if (teamChannel.door === "slack" || teamChannel.door === "teams") return undefined;
  return teamChannel.id === "managers" || teamChannel.id === "owner" ? undefined : teamChannel.id;
}

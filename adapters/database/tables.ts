import type { Generated } from "kysely";
import type { JobStatus } from "../../src/jobs/job.ts";
import type { Language } from "../../src/messages/language.ts";
import type { ConversationReference } from "../../src/ports/conversation-references.ts";
import type { PostState } from "../../src/ports/outbox.ts";
import type { CautionMark, Door, Role } from "../../src/ports/store.ts";
import type { UnitSystem } from "../../src/units/quantity-kinds.ts";

/**
 * Every table by name. All but the first three belong to a workspace and are reached through `scope.ts` alone. What is
 * kept as JSON has its shape in `src/boundary`: a change there needs a migration of the rows that are there already.
 */
export interface Tables {
  readonly workspace: WorkspaceTable;
  readonly workspace_door: WorkspaceDoorTable;
  readonly slack_installation: SlackInstallationTable;
  readonly person: PersonTable;
  readonly person_door: PersonDoorTable;
  readonly conversation: ConversationTable;
  readonly delivery: DeliveryTable;
  readonly link_code: LinkCodeTable;
  readonly exchange: ExchangeTable;
  readonly caution_mark: CautionMarkTable;
  readonly job: JobTable;
  readonly job_event: JobEventTable;
  readonly job_counter: JobCounterTable;
  readonly crew_event: CrewEventTable;
  readonly post: PostTable;
  readonly channel_card: ChannelCardTable;
  readonly teams_conversation: TeamsConversationTable;
}

interface WorkspaceTable {
  readonly id: string;
  readonly name: string;
}
/** Which workspace an organisation of a platform belongs to. */
interface WorkspaceDoorTable {
  readonly door: Door;
  readonly organisation: string;
  readonly workspace: string;
}
/** A Slack organisation that let Oldhand in; it has a workspace through `workspace_door` or the settings. */
interface SlackInstallationTable {
  readonly team: string;
  readonly name: string;
  readonly bot_user: string;
  /** With spaces between them. */
  readonly scopes: string;
  readonly installed_by: string;
  readonly installed_ms: number;
  /** Sealed, as the refresh token is. */
  readonly token: string;
  readonly refresh_token: string | null;
  readonly expires_ms: number | null;
  readonly version: number;
}
interface PersonTable {
  readonly workspace: string;
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly language: Language;
  readonly units: UnitSystem;
  /** 1: stands in the company's books, which say the name and the role. */
  readonly in_books: 0 | 1;
}
/** How a person is called at a door. */
interface PersonDoorTable {
  readonly workspace: string;
  readonly door: Door;
  readonly organisation: string;
  readonly user: string;
  readonly person: string;
}
interface ConversationTable {
  readonly workspace: string;
  readonly person: string;
  readonly conversation: string;
  /** A `ConversationState` as JSON. */
  readonly state: string;
  /** 1: the state holds an open walk. */
  readonly has_walk: 0 | 1;
  /** Number of the exchange that last touched it; unlike a time it never runs backwards. */
  readonly touched: number;
}
/** What a delivery was answered with, so that the same delivery again gets the same card. */
interface DeliveryTable {
  readonly workspace: string;
  readonly delivery: string;
  /** A `Card` as JSON. */
  readonly card: string;
  readonly at_ms: number;
}
interface LinkCodeTable {
  readonly workspace: string;
  readonly code: string;
  readonly person: string;
  readonly expires_ms: number;
  readonly used_ms: number | null;
}
/** The log: who said what, when, at which door, and what it was answered with. Rows are only ever added. */
interface ExchangeTable {
  readonly number: Generated<number>;
  readonly workspace: string;
  readonly person: string;
  readonly door: Door;
  readonly conversation: string;
  readonly delivery: string;
  readonly at_ms: number;
  readonly said: string;
  readonly card_title: string;
}
/** What somebody did about a caution that was shown in a conversation. Rows are only ever added. */
interface CautionMarkTable {
  readonly number: Generated<number>;
  readonly workspace: string;
  readonly person: string;
  readonly door: Door;
  readonly conversation: string;
  readonly caution: string;
  /** The data that it was shown with, as JSON. */
  readonly about: string;
  readonly act: CautionMark["act"];
  readonly because: string | null;
  readonly at_ms: number;
  /** Number of the job that was talked about. */
  readonly job: string | null;
  /** A `SeenAs` as JSON. */
  readonly shown: string | null;
}
/** A job as all its events leave it; written in the transaction of its last event. */
interface JobTable {
  readonly workspace: string;
  readonly number: string;
  readonly status: JobStatus;
  readonly day: string | null;
  /** Ids as JSON. */
  readonly people: string;
  /** A `Job` as JSON. */
  readonly state: string;
  readonly version: number;
}
/** What happened to jobs. Rows are only ever added. */
interface JobEventTable {
  readonly workspace: string;
  readonly job: string;
  readonly number: number;
  readonly person: string;
  /** Name of the person as it was then. */
  readonly by: string;
  readonly door: Door;
  readonly at_ms: number;
  /** A `JobChange` as JSON. */
  readonly change: string;
  readonly amends: number | null;
}
/** What was said of people, trucks and stock since the books. Rows are only ever added. */
interface CrewEventTable {
  readonly workspace: string;
  readonly number: number;
  readonly person: string;
  /** Name of the person as it was then. */
  readonly by: string;
  readonly door: Door;
  readonly at_ms: number;
  /** A `CrewChange` as JSON. */
  readonly change: string;
  readonly amends: number | null;
}
/** The last job number that was given out. */
interface JobCounterTable {
  readonly workspace: string;
  readonly last: number;
}
/** The outbox: what channels are to be told, and how far that is. */
interface PostTable {
  readonly number: Generated<number>;
  readonly workspace: string;
  readonly id: string;
  readonly door: Door;
  readonly channel: string;
  readonly thread: string | null;
  /** A `Card` as JSON. */
  readonly card: string;
  readonly language: Language;
  readonly follows: string | null;
  readonly updates: string | null;
  readonly not_before_ms: number | null;
  /** A `PostPaper` as JSON. */
  readonly paper: string | null;
  readonly state: PostState;
  readonly tries: number;
  readonly due_ms: number;
  readonly written_ms: number;
  /** The platform's own id of the message. */
  readonly message: string | null;
  readonly because: string | null;
}
/** What was posted to channels of our own. */
interface ChannelCardTable {
  /** Id of the message whose thread it stands in. */
  readonly follows: string | null;
  readonly number: Generated<number>;
  readonly workspace: string;
  readonly channel: string;
  readonly id: string;
  /** A `Card` as JSON. */
  readonly card: string;
  readonly at_ms: number;
}
/** Conversations of Teams that posts may go to, as the platform last spoke of them. */
interface TeamsConversationTable {
  readonly workspace: string;
  readonly conversation: string;
  readonly tenant: string;
  readonly kind: ConversationReference["kind"];
  readonly service_url: string;
  readonly bot: string;
  readonly team: string | null;
}

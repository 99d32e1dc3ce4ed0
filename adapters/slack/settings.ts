/** Settings of the Slack door as somebody typed them. */
export interface SlackSettings {
  /** From "Basic information" of the app: proves that a request comes from Slack. Needed unless `appToken` is given. */
  readonly signingSecret?: string;
  /** App-level token, begins with xapp-: Slack is listened to over a socket. */
  readonly appToken?: string;
  /** From "OAuth & permissions" of the app, begins with xoxb-: of the one workspace that has it. Or `oauth`. */
  readonly botToken?: string;
  /** Given where any workspace may install the app. */
  readonly oauth?: SlackOAuth;
  readonly host: string;
  /** 0 takes any free port. */
  readonly port: number;
  /** Where the Web API is; Slack's own when left out. */
  readonly apiUrl?: string;
  readonly pace?: Partial<Pace>;
}

/** What the app shows for itself while it is installed. */
export interface SlackOAuth {
  readonly clientId: string;
  readonly clientSecret: string;
  /** The first one signs what is handed to a browser. */
  readonly secretKeys: readonly Uint8Array[];
}

/** How long the door waits for what. */
export interface Pace {
  /** Work that is shorter shows no progress [ms]. */
  readonly progressAfter_ms: number;
  /** Between two updates of a message; Slack allows about 50 a minute [ms]. */
  readonly progressEvery_ms: number;
  /** A form must be acknowledged within 3 s; after this long it closes and the answer follows [ms]. */
  readonly formWait_ms: number;
  /** One call of the Web API or of a response address [ms]. */
  readonly call_ms: number;
  /** At the end, work that goes on is waited for this long [ms]. */
  readonly drain_ms: number;
}

export const USUAL_PACE: Pace = {
  progressAfter_ms: 700,
  progressEvery_ms: 1_500,
  formWait_ms: 2_300,
  call_ms: 10_000,
  drain_ms: 8_000,
};

/** What is wrong with the settings, one clear sentence each. */
class SlackSettingsError extends Error {
  readonly code = "slack-settings";
  readonly problems: readonly string[];

  constructor(problems: readonly string[]) {
    super(problems.join(" "));
    this.problems = problems;
  }
}

/** Stops a door that could not work, or that would let anybody in. */
export function checkSettings({ signingSecret = "", botToken, appToken, oauth }: SlackSettings): void {
  const problems = [
    ...(signingSecret.trim() === "" && appToken === undefined
      ? ["The Slack signing secret is empty; copy it from the app's basic information."]
      : []),
    ...(botToken === undefined || botToken.startsWith("xoxb-")
      ? []
      : ["The Slack bot token does not begin with xoxb-; copy the bot token, not the user or app token."]),
    ...((botToken === undefined) === (oauth === undefined)
      ? ["The Slack door needs either a bot token or a client id and secret, and not both."]
      : []),
  ];
  if (problems.length > 0) throw new SlackSettingsError(problems);
}

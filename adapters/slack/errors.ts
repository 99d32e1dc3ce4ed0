/** Slack refused a call and says why in one word, such as `channel_not_found`. */
export class SlackRefusalError extends Error {
  readonly code = "slack-refusal";
  readonly reason: string;

  constructor(reason: string, options?: ErrorOptions) {
    super(`Slack refused: ${reason}`, options);
    this.reason = reason;
  }
}

/** Too many calls; the same call may be made again after the wait. */
export class SlackBusyError extends Error {
  readonly code = "slack-busy";
  readonly wait_s: number;

  constructor(wait_s: number, options?: ErrorOptions) {
    super(`Slack asks to wait ${wait_s} s`, options);
    this.wait_s = wait_s;
  }
}

/** Nothing or nothing useful came back. */
export class SlackUnreachableError extends Error {
  readonly code = "slack-unreachable";
}

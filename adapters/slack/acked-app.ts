import { App, type ReceiverEvent } from "@slack/bolt";

/**
 * Bolt lets a request that no listener acknowledges hang for 3 s and then answers 404. Here it is acknowledged as soon
 * as all listeners are done with it: unknown actions, shortcuts, views, menus and whatever Slack invents next.
 * A listener that throws first is an error and is answered as one.
 */
export class AckedApp extends App {
  readonly #going = new Set<Promise<void>>();
  #isFinishing = false;

  override async processEvent(event: ReceiverEvent): Promise<void> {
    // Not acknowledged, so that Slack sends it again, to the next one that is there.
    if (this.#isFinishing) return;
    const work = this.#processAcked(event);
    this.#going.add(work);
    await work.finally(() => this.#going.delete(work));
  }

  /** Takes nothing more, and resolves when all that was taken is acknowledged. */
  async finish(): Promise<void> {
    this.#isFinishing = true;
    await Promise.allSettled(this.#going);
  }

  async #processAcked(event: ReceiverEvent): Promise<void> {
    let isAcked = false;
    const ack: ReceiverEvent["ack"] = async (response) => {
      isAcked = true;
      try {
        await event.ack(response);
      } catch (error) {
        if (!isSocketLost(error)) throw error;
        // The answer goes its own way; Slack may send this again, and then it is known.
        this.logger.warn("an acknowledgement did not reach Slack: the socket was lost");
      }
    };
    await super.processEvent({ ...event, ack });
    if (!isAcked) await ack();
  }
}

function isSocketLost(error: unknown): boolean {
  return error instanceof Error && "code" in error && String(error.code).startsWith("slack_socket_mode_");
}

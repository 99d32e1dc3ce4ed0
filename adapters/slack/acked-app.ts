import { App, type ReceiverEvent } from "@slack/bolt";

/**
 * Bolt lets a request that no listener acknowledges hang for 3 s and then answers 404. Here it is acknowledged as soon
 * as all listeners are done with it: unknown actions, shortcuts, views, menus and whatever Slack invents next.
 * A listener that throws first is an error and is answered as one.
 */
export class AckedApp extends App {
  override async processEvent(event: ReceiverEvent): Promise<void> {
    let isAcked = false;
    const ack: ReceiverEvent["ack"] = async (response) => {
      isAcked = true;
      await event.ack(response);
    };
    await super.processEvent({ ...event, ack });
    if (!isAcked) await event.ack();
  }
}

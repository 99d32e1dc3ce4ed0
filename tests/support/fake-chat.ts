import type { ChatPort, FindOutcome, Outgoing, SendOutcome } from "../../src/ports/chat.ts";

/** What happens to the next send: it arrives, its answer is lost, it never arrives, or the platform says something. */
export type ChatFate = "arrives" | "answer_lost" | "never_arrives" | Exclude<SendOutcome, { readonly kind: "sent" }>;

/** A platform that keeps what arrives, whatever becomes of those who send. */
export interface FakeChat extends ChatPort {
  readonly messages: Outgoing[];
  readonly sends: Outgoing[];
  /** Taken from the front; when none is left, everything arrives. */
  readonly fates: ChatFate[];
}

export function createFakeChat(canLook: boolean): FakeChat {
  const messages: Outgoing[] = [];
  const sends: Outgoing[] = [];
  const fates: ChatFate[] = [];
  const find = async (out: Outgoing): Promise<FindOutcome> => {
    const at = messages.findIndex(({ id }) => id === out.id);
    return at < 0 ? { kind: "absent" } : { kind: "found", messageId: `m${at}` };
  };
  return {
    messages,
    sends,
    fates,
    ...(canLook && { find }),
    async send(out): Promise<SendOutcome> {
      sends.push(out);
      const fate = fates.shift() ?? "arrives";
      if (typeof fate === "object") return fate;
      if (fate === "never_arrives") throw new Error("no answer");
      messages.push(out);
      if (fate === "answer_lost") throw new Error("no answer");
      return { kind: "sent", messageId: `m${messages.length - 1}` };
    },
  };
}

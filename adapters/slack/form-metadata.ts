import { parseJson } from "./button-value.ts";
import type { Place } from "./heard.ts";
import { LIMITS } from "./limits.ts";
import { readString } from "./read-record.ts";

/** What a modal carries along: for which topic it is, and where its answer goes. */
export interface FormMetadata {
  readonly topic: string;
  readonly channel: string;
  readonly thread?: string;
  readonly responseUrl?: string;
}

/** Left out when too long: the address for the answer, which there are other ways to. */
export function writeFormMetadata(topic: string, { channel, thread, responseUrl }: Place): string {
  const needed: FormMetadata = { topic, channel, ...(thread !== undefined && { thread }) };
  const all = JSON.stringify({ ...needed, ...(responseUrl !== undefined && { responseUrl }) });
  return all.length <= LIMITS.viewMetadata ? all : JSON.stringify(needed);
}

/** Reads what was written above; nothing when the modal is not one of ours. */
export function readFormMetadata(text: string): FormMetadata | undefined {
  const read = parseJson(text);
  const [topic, channel] = [readString(read, "topic"), readString(read, "channel")];
  if (topic === undefined || channel === undefined) return undefined;
  const [thread, responseUrl] = [readString(read, "thread"), readString(read, "responseUrl")];
  return {
    topic,
    channel,
    ...(thread !== undefined && { thread }),
    ...(responseUrl !== undefined && { responseUrl }),
  };
}

import type { ChatPort } from "../../src/ports/chat.ts";

/**
 * Teams takes a message that answers nothing only with a stored reference to the conversation, and none is stored yet.
 * So a post to Teams is given up at once and shown to the owner, instead of being tried for hours.
 */
export const teamsPosts: ChatPort = {
  send: async () => ({ kind: "refused", because: "posts to Teams are not set up" }),
};

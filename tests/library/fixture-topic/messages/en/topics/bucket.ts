import type { TopicTexts } from "../../../../../../src/messages/topic-texts.ts";
import type { bucket } from "../../../topics/bucket.ts";

export const texts: TopicTexts<typeof bucket> = {
  title: "Bucket",
  summary: "how long a bucket takes to fill",
  examples: ["bucket size 5 gal flow 2 gpm"],
  facts: {
    size: { label: "Size of the bucket", question: "How big is the bucket?", words: ["size", "bucketful"] },
    flow: { label: "Flow", question: "How fast does it run?", words: ["flow", "running"] },
    colour: {
      label: "Colour",
      question: "What colour is it?",
      words: ["colour"],
      options: { red: { label: "Red", words: ["red"] }, grey: { label: "Grey", words: ["grey"] } },
    },
  },
  results: { fill_time: "Time to fill" },
  findings: { fills: ({ time }) => `The bucket is full after ${time}.` },
};

import { type FindingOf, q } from "../../../../src/declaration/answer.ts";
import { declareTopic } from "../../../../src/declaration/topic.ts";

/** A topic for the recipe test: how long a bucket takes to fill. Volume over flow, exact arithmetic. */
export const bucket = declareTopic({
  id: "bucket",
  work: "short",
  facts: {
    size: { type: "quantity", quantity: "volume", min: 1, max: 100 },
    flow: { type: "quantity", quantity: "water_flow", min: 0.01, max: 2 },
    colour: { type: "choice", options: ["red", "grey"], optional: true },
  },
  results: ["fill_time"],
  findings: { fills: { time: "time" } },
  compute: ({ size_L, flow_L_s }) => {
    const time = q("time", size_L / flow_L_s);
    const headline: FindingOf<{ fills: { time: "time" } }> = { code: "fills", data: { time } };
    return {
      kind: "answer",
      verdict: "info",
      headline,
      findings: [],
      results: [
        {
          id: "fill_time",
          quantity: time,
          how: {
            equation: "t = V / q",
            inputs: [
              { symbol: "V", quantity: q("volume", size_L) },
              { symbol: "q", quantity: q("water_flow", flow_L_s) },
            ],
            sources: [{ basis: "computed", document: "Volume over flow" }],
          },
        },
      ],
    };
  },
});

import type { Job } from "../jobs/job.ts";
import { acceptedReadings } from "../jobs/startup-state.ts";
import type { Gauge, PaperBlock } from "../ports/papers.ts";
import { labelOfStep } from "./job-labels.ts";
import { RECORD_TEXTS } from "./record-words.ts";
import { showQuantity, type Voice } from "./voice.ts";

/** A picture of what was measured beside what is accepted; readings that nothing is known to judge by are left out. */
export function buildGauges(voice: Voice, job: Job): readonly PaperBlock[] {
  if (voice.books === undefined) return [];
  const texts = RECORD_TEXTS[voice.language];
  const gauges = acceptedReadings(job, voice.books).map(({ reading, low, high }): Gauge => {
    const { kind, value } = reading.quantity;
    return {
      label: labelOfStep(voice, reading.id),
      value,
      low,
      high,
      valueText: showQuantity(voice, reading.quantity),
      lowText: showQuantity(voice, { kind, value: low }),
      highText: showQuantity(voice, { kind, value: high }),
    };
  });
  if (gauges.length === 0) return [];
  const lines = gauges.map((one) => texts.chartLine(one.label, one.valueText, one.lowText, one.highText));
  return [
    { kind: "heading", text: texts.chartTitle },
    { kind: "gauges", alt: texts.chartAlt(lines.join(" ")), legend: texts.chartLegend, gauges },
  ];
}

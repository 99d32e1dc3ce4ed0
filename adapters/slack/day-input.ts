import type { Datepicker } from "@slack/types";
import { isDay } from "../../src/messages/field-values.ts";

/**
 * A calendar that opens.
 * @param value YYYY-MM-DD; anything else is left out, as Slack would refuse it
 */
export function dayInput(action: string, value: string | undefined): Datepicker {
  return {
    type: "datepicker",
    action_id: action,
    ...(value !== undefined && isDay(value) && { initial_date: value }),
  };
}

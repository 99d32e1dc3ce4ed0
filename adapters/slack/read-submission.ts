import { createHash } from "node:crypto";
import type { ViewSubmitAction } from "@slack/bolt";
import { readFormMetadata } from "./form-metadata.ts";
import { conversationOf, type Heard, isDirectChannel, type Place } from "./heard.ts";
import { FIELD_ACTION } from "./render-modal.ts";

/** A form that was sent; nothing when the modal is not one of ours. */
export function readSubmission({ view, user, team }: ViewSubmitAction): Heard | undefined {
  const metadata = readFormMetadata(view.private_metadata);
  const organisation = user.team_id ?? team?.id;
  if (metadata === undefined || organisation === undefined) return undefined;
  const { topic, ...where } = metadata;
  const place: Place = { team: organisation, user: user.id, isDirect: isDirectChannel(where.channel), ...where };
  const fields = readFields(view.state.values);
  return {
    place,
    inbound: {
      caller: { door: "slack", organisation, user: user.id, name: user.name },
      conversation: conversationOf(place),
      // A form that came back with problems is sent again under the same view id, so its content is part of the id.
      delivery: `view/${view.id}/${digest(fields)}`,
      text: "",
      form: { topic, fields },
    },
  };
}

type Values = ViewSubmitAction["view"]["state"]["values"];

/** What was typed or chosen in each field; a field that was left empty is an empty text. */
function readFields(values: Values): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(values).map(([fact, inputs]) => {
      const input = inputs[FIELD_ACTION];
      return [fact, input?.selected_option?.value ?? input?.selected_date ?? input?.value ?? ""];
    }),
  );
}

function digest(fields: Readonly<Record<string, string>>): string {
  return createHash("sha256").update(JSON.stringify(fields)).digest("hex").slice(0, 32);
}

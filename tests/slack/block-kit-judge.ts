/**
 * A judge of messages and modals that knows nothing of the renderer: it walks the JSON as it would be sent and lists
 * everything that Slack would refuse. Lengths are the comments of @slack/types 3.2.0 (which repeat
 * https://docs.slack.dev/reference/block-kit); 50 blocks and the total are from slackapi/bolt-js issue 2509; one table a
 * message is Slack's answer `only_one_table_allowed`. Slack publishes no schema of Block Kit.
 */

type Json = Readonly<Record<string, unknown>>;
const TEXT_OBJECTS = new Set(["plain_text", "mrkdwn"]);
const KNOWN_BLOCKS = new Set(["header", "context", "rich_text", "table", "actions", "input", "image"]);
/** Measured total in issue 2509 at which a message of text and one divider was refused. */
const REFUSED_AT = 13_172;

/** Everything wrong with one message. */
export function judgeMessage(message: unknown): readonly string[] {
  const { text, blocks } = asJson(message);
  const list = asList(blocks);
  const tables = list.filter((block) => asJson(block)["type"] === "table").length;
  return [
    ...(typeof text === "string" && text.length >= 1 && text.length <= 40_000 ? [] : ["no text, or too long"]),
    ...(list.length <= 50 ? [] : [`${list.length} blocks`]),
    ...(tables <= 1 ? [] : [`${tables} tables`]),
    ...(JSON.stringify(list).length < REFUSED_AT ? [] : ["too long in total"]),
    ...escapeFaults(String(text), "text"),
    ...repeated(list, "action_id"),
    ...repeated(list, "block_id"),
    ...list.flatMap((block, index) => judgeBlock(asJson(block), `blocks[${index}]`)),
  ];
}

/** Everything wrong with one modal. */
export function judgeModal(view: unknown): readonly string[] {
  const { type, title, submit, blocks, private_metadata: metadata, callback_id: callback } = asJson(view);
  const list = asList(blocks);
  return [
    ...(type === "modal" ? [] : [`type ${String(type)}`]),
    ...judgeText(title, "title", 24),
    ...judgeText(submit, "submit", 24),
    ...(String(metadata).length <= 3000 ? [] : ["private_metadata too long"]),
    ...(String(callback).length <= 255 ? [] : ["callback_id too long"]),
    ...(list.length <= 100 ? [] : [`${list.length} blocks`]),
    ...repeated(list, "block_id"),
    ...list.flatMap((block, index) => judgeBlock(asJson(block), `blocks[${index}]`)),
  ];
}

/** Everything wrong with what is published on the home tab. */
export function judgeHome(view: unknown): readonly string[] {
  const { type, blocks, callback_id: callback, ...rest } = asJson(view);
  const list = asList(blocks);
  return [
    ...(type === "home" ? [] : [`type ${String(type)}`]),
    ...(Object.keys(rest).every((key) => ["private_metadata", "external_id"].includes(key)) ? [] : ["unknown fields"]),
    ...(String(callback ?? "").length <= 255 ? [] : ["callback_id too long"]),
    ...size(list, "blocks", 100),
    // Slack's answer `view_too_large`: above 250 kB (docs.slack.dev, views.publish).
    ...(Buffer.byteLength(JSON.stringify(view)) <= 250_000 ? [] : ["larger than 250 kB"]),
    ...repeated(list, "action_id"),
    ...repeated(list, "block_id"),
    ...list.flatMap((block, index) =>
      asJson(block)["type"] === "table"
        ? ["a table, for messages only"]
        : judgeBlock(asJson(block), `blocks[${index}]`),
    ),
  ];
}

function judgeBlock(block: Json, at: string): readonly string[] {
  switch (block["type"]) {
    case "header":
      return judgeText(block["text"], `${at}.text`, 150);
    case "context":
      return [
        ...size(asList(block["elements"]), `${at}.elements`, 10),
        ...asList(block["elements"]).flatMap((element, i) => judgeText(element, `${at}.elements[${i}]`, 2000)),
      ];
    case "rich_text":
      return judgeRich(block, at);
    case "table":
      return judgeTable(block, at);
    case "actions":
      return [
        ...(String(block["block_id"] ?? "").length <= 255 ? [] : [`${at}: block_id`]),
        ...size(asList(block["elements"]), `${at}.elements`, 25),
        ...asList(block["elements"]).flatMap((element, i) => judgeButton(asJson(element), `${at}.elements[${i}]`)),
      ];
    case "input":
      return judgeInput(block, at);
    case "image":
      return judgeImage(block, at);
    default:
      return [`${at}: unknown block ${String(block["type"])} of ${[...KNOWN_BLOCKS].join(", ")}`];
  }
}

function judgeRich(block: Json, at: string): readonly string[] {
  const texts = richTexts(block);
  return [
    ...(texts.length > 0 ? [] : [`${at}: empty`]),
    ...texts.flatMap((text) => [
      ...(text.length >= 1 ? [] : [`${at}: empty text`]),
      ...(text.length <= 3000 ? [] : [`${at}: text of ${text.length}`]),
      ...characterFaults(text, at),
    ]),
  ];
}

/** Every text element; anything that could mention, link or draw is a fault, because no card asks for it. */
function richTexts(part: Json): readonly string[] {
  const kinds = new Set(["rich_text", "rich_text_section", "rich_text_quote"]);
  if (kinds.has(String(part["type"]))) return asList(part["elements"]).flatMap((inner) => richTexts(asJson(inner)));
  return part["type"] === "text" ? [String(part["text"])] : [`(live element ${String(part["type"])})`.repeat(200)];
}

function judgeTable(block: Json, at: string): readonly string[] {
  const rows = asList(block["rows"]).map(asList);
  const widths = new Set(rows.map((row) => row.length));
  return [
    ...size(rows, `${at}.rows`, 100),
    ...(widths.size === 1 ? [] : [`${at}: ragged`]),
    ...rows.flatMap((row) => [
      ...size(row, `${at}.cells`, 20),
      ...row.flatMap((cell) => {
        const { type, text } = asJson(cell);
        const isGood = type === "raw_text" && typeof text === "string" && text.length >= 1;
        return isGood ? characterFaults(text, at) : [`${at}: bad cell`];
      }),
    ]),
  ];
}

/** A list in a message, as @slack/types describes StaticSelect. */
function judgeList(list: Json, at: string): readonly string[] {
  const options = asList(list["options"]).map(asJson);
  return [
    ...size(options, `${at}.options`, 100),
    ...options.flatMap((option) => [
      ...judgeText(option["text"], `${at}.option`, 75),
      ...lengthOf(option["value"], `${at}.value`, 75),
      ...(/[&<>]/.test(String(option["value"])) ? [`${at}: value would come back with entities`] : []),
    ]),
    ...(String(list["action_id"]).length <= 255 ? [] : [`${at}: action_id`]),
  ];
}

function judgeButton(button: Json, at: string): readonly string[] {
  if (button["type"] === "static_select") return judgeList(button, at);
  if (button["type"] === "datepicker") return judgeDatepicker(button, at);
  const value = button["value"];
  return [
    ...(button["type"] === "button" ? [] : [`${at}: not a button`]),
    ...judgeText(button["text"], at, 75),
    ...(typeof value === "string" && value.length <= 2000 ? [] : [`${at}: value`]),
    ...(/[&<>]/.test(String(value)) ? [`${at}: value would come back with entities`] : []),
    ...(String(button["action_id"]).length <= 255 ? [] : [`${at}: action_id`]),
    ...([undefined, "primary", "danger"].includes(button["style"] as string) ? [] : [`${at}: style`]),
  ];
}

const INPUTS = new Set(["plain_text_input", "radio_buttons", "static_select", "datepicker", "number_input"]);

/** As @slack/types describes Datepicker: a day there is, written YYYY-MM-DD, or none. */
function judgeDatepicker(element: Json, at: string): readonly string[] {
  const day = element["initial_date"];
  const isDay = typeof day === "string" && /^\d{4}-\d\d-\d\d$/.test(day) && isReal(day);
  return [
    ...(day === undefined || isDay ? [] : [`${at}: initial_date ${String(day)}`]),
    ...lengthOf(element["action_id"], `${at}.action_id`, 255),
  ];
}

/** Date of the platform turns February 30 into March. */
function isReal(day: string): boolean {
  const date = new Date(`${day}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(day);
}

/** As @slack/types describes NumberInput: numbers as texts, the ends in order, what stands in it within them. */
function judgeNumber(element: Json, at: string): readonly string[] {
  const { is_decimal_allowed: takesDecimals, min_value: min, max_value: max, initial_value: initial } = element;
  const isNumber = (value: unknown) =>
    value === undefined || (typeof value === "string" && /^-?\d+(\.\d+)?$/.test(value));
  const [least, most, value] = [Number(min ?? -Infinity), Number(max ?? Infinity), Number(initial ?? min ?? max ?? 0)];
  return [
    ...(typeof takesDecimals === "boolean" ? [] : [`${at}: is_decimal_allowed`]),
    ...([min, max, initial].every(isNumber) ? [] : [`${at}: not a number`]),
    ...(least <= most ? [] : [`${at}: min above max`]),
    ...(value >= least && value <= most ? [] : [`${at}: initial_value out of range`]),
    ...(takesDecimals === false && !Number.isInteger(Number(initial ?? 0)) ? [`${at}: decimals`] : []),
  ];
}

/** As @slack/types describes ImageBlock with a file that was uploaded to Slack; no card may show anything else. */
function judgeImage(block: Json, at: string): readonly string[] {
  const file = asJson(block["slack_file"]);
  return [
    ...(block["image_url"] === undefined ? [] : [`${at}: an address from outside`]),
    // The pattern is Slack's own answer, quoted in slackapi/python-slack-sdk issue 1521.
    ...(/^F[A-Z0-9]{8,}$/.test(String(file["id"])) && file["url"] === undefined ? [] : [`${at}: slack_file`]),
    ...lengthOf(block["alt_text"], `${at}.alt_text`, 2000),
    ...characterFaults(String(block["alt_text"]), at),
    ...(block["title"] === undefined ? [] : judgeText(block["title"], `${at}.title`, 2000)),
  ];
}

function judgeInput(block: Json, at: string): readonly string[] {
  const element = asJson(block["element"]);
  if (!INPUTS.has(String(element["type"]))) return [`${at}: unknown input ${String(element["type"])}`];
  const options = asList(element["options"] ?? []).map(asJson);
  const most = element["type"] === "radio_buttons" ? 10 : 100;
  const initial = element["initial_option"];
  return [
    ...judgeText(block["label"], `${at}.label`, 2000),
    ...(block["hint"] === undefined ? [] : judgeText(block["hint"], `${at}.hint`, 2000)),
    ...(String(block["block_id"]).length <= 255 ? [] : [`${at}: block_id`]),
    ...(element["placeholder"] === undefined ? [] : judgeText(element["placeholder"], `${at}.placeholder`, 150)),
    ...(element["type"] === "plain_text_input"
      ? lengthOf(element["initial_value"] ?? "-", `${at}.initial_value`, 3000)
      : []),
    ...(element["type"] === "datepicker" ? judgeDatepicker(element, at) : []),
    ...(element["type"] === "number_input" ? judgeNumber(element, at) : []),
    ...(element["type"] === "radio_buttons" || element["type"] === "static_select"
      ? size(options, `${at}.options`, most)
      : []),
    ...options.flatMap((option) => [
      ...judgeText(option["text"], `${at}.option`, 75),
      ...lengthOf(option["value"], `${at}.value`, 75),
    ]),
    ...(initial === undefined || options.some((option) => JSON.stringify(option) === JSON.stringify(initial))
      ? []
      : [`${at}: initial_option is none of the options`]),
  ];
}

function judgeText(object: unknown, at: string, most: number): readonly string[] {
  const { type, text } = asJson(object);
  if (!TEXT_OBJECTS.has(String(type)) || typeof text !== "string") return [`${at}: no text object`];
  return [
    ...(type === "plain_text" ? [] : [`${at}: mrkdwn, in which * and _ cannot be escaped`]),
    ...lengthOf(text, at, most),
    ...escapeFaults(text, at),
    ...characterFaults(text, at),
  ];
}

/** After escaping once, `&` begins one of three entities and `<` and `>` are gone; a cut entity fails this too. */
function escapeFaults(text: string, at: string): readonly string[] {
  return /[<>]|&(?!(?:amp|lt|gt);)/.test(text) ? [`${at}: not escaped, or cut inside an entity`] : [];
}

function characterFaults(text: string, at: string): readonly string[] {
  return [
    ...(/\p{Cs}/u.test(text) ? [`${at}: half of a character`] : []),
    ...(/[^\P{Cc}\n]/u.test(text) ? [`${at}: control character`] : []),
    ...(/[\u202A-\u202E\u2066-\u2069]/.test(text) ? [`${at}: turns the reading direction`] : []),
  ];
}

function lengthOf(text: unknown, at: string, most: number): readonly string[] {
  const isGood = typeof text === "string" && text.length >= 1 && text.length <= most;
  return isGood ? [] : [`${at}: length ${String(text).length} of ${most}`];
}

function size(list: readonly unknown[], at: string, most: number): readonly string[] {
  return list.length >= 1 && list.length <= most ? [] : [`${at}: ${list.length} of ${most}`];
}

function repeated(blocks: readonly unknown[], field: "action_id" | "block_id"): readonly string[] {
  const owners = field === "block_id" ? blocks : blocks.flatMap((block) => asList(asJson(block)["elements"] ?? []));
  const ids = owners.map((owner) => asJson(owner)[field]).filter((id) => id !== undefined);
  return new Set(ids).size === ids.length ? [] : [`${field} repeated`];
}

function asJson(value: unknown): Json {
  return typeof value === "object" && value !== null ? (value as Json) : {};
}

function asList(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

import type {
  Block,
  ButtonsBlock,
  CautionBlock,
  FormBlock,
  QuestionBlock,
  RowsBlock,
  TableBlock,
  TextBlock,
} from "../../src/messages/card.ts";
import { takeStart } from "./plain-text.ts";

/** Smaller blocks that say the same, for a block that is too large for one message; each is broken up again if need be. */
export function breakUpBlock(block: Block): readonly Block[] {
  switch (block.kind) {
    case "headline":
      return halveText(block.text).map((text, index) => (index === 0 ? { ...block, text } : plain(text)));
    case "text":
      return halveText(block.text).map((text) => ({ ...block, text }));
    case "rows":
      return breakUpRows(block);
    case "table":
      return breakUpTable(block);
    case "caution":
      return breakUpCaution(block);
    case "question":
      return breakUpQuestion(block);
    case "buttons":
      return breakUpButtons(block);
    case "form":
      return breakUpForm(block);
    case "chart":
      return [{ kind: "text", tone: "heading", text: block.title }, plain(block.alt)];
    case "progress":
      return [plain(block.text), { ...block, text: "" }];
    case "file":
      return halveText(block.text).map((text, index) => (index === 0 ? { ...block, text } : plain(text)));
  }
}

function plain(text: string): TextBlock {
  return { kind: "text", tone: "plain", text };
}

/** The two halves of a text, parted at the end of a line, sentence or word near the middle where there is one. */
function halveText(text: string): readonly string[] {
  if (text.length < 2) return [text];
  const middle = Math.ceil(text.length / 2);
  for (const mark of ["\n", ". ", " "]) {
    const at = text.lastIndexOf(mark, middle);
    if (at > middle / 2) return [text.slice(0, at + mark.length), text.slice(at + mark.length)];
  }
  const start = takeStart(text, middle);
  return [start, text.slice(start.length)].filter((half) => half !== "");
}

function breakUpRows(block: RowsBlock): readonly Block[] {
  const [row, ...more] = block.rows;
  if (row === undefined) return block.heading ? [{ kind: "text", tone: "heading", text: block.heading }] : [];
  if (more.length === 0) {
    const heading: readonly Block[] = block.heading ? [{ kind: "text", tone: "heading", text: block.heading }] : [];
    return [...heading, plain(`${row.label}:`), plain(row.value), ...(row.note ? [plain(`(${row.note})`)] : [])];
  }
  const middle = Math.ceil(block.rows.length / 2);
  return [
    { ...block, rows: block.rows.slice(0, middle) },
    { kind: "rows", rows: block.rows.slice(middle) },
  ];
}

function breakUpTable(block: TableBlock): readonly Block[] {
  if (block.rows.length > 1) {
    const middle = Math.ceil(block.rows.length / 2);
    return [
      { ...block, rows: block.rows.slice(0, middle) },
      { ...block, rows: block.rows.slice(middle) },
    ];
  }
  const [row] = block.rows;
  const caption: Block = { kind: "text", tone: "heading", text: block.caption };
  return [caption, ...block.columns.flatMap((label, column) => [plain(`${label}:`), plain(row?.[column] ?? "")])];
}

function breakUpCaution(block: CautionBlock): readonly Block[] {
  const { show, cites } = block;
  const longest = Math.max(block.text.length, show?.length ?? 0, cites.length);
  if (show !== undefined && show.length === longest) {
    const { show: _, ...rest } = block;
    return [rest, plain(`→ ${show}`)];
  }
  if (cites.length === longest)
    return [
      { ...block, cites: "" },
      { kind: "text", tone: "quiet", text: cites },
    ];
  const { show: _, ...start } = { ...block, cites: "" };
  const halves = halveText(block.text);
  return halves.map((text, index) => (index === halves.length - 1 ? { ...block, text } : { ...start, text }));
}

function breakUpQuestion(block: QuestionBlock): readonly Block[] {
  const { help, ...rest } = block;
  if (help !== undefined) return [rest, plain(help)];
  return halveText(block.prompt).map((prompt, index) => (index === 0 ? { ...block, prompt } : plain(prompt)));
}

function breakUpButtons(block: ButtonsBlock): readonly Block[] {
  const [button, ...more] = block.buttons;
  if (button === undefined) return [];
  if (more.length === 0) return [plain(button.say)];
  const middle = Math.ceil(block.buttons.length / 2);
  return [
    { ...block, buttons: block.buttons.slice(0, middle) },
    { ...block, buttons: block.buttons.slice(middle) },
  ];
}

/** A form must stay in one message, because its fields are sent together; without its hints, else as a list to type from. */
function breakUpForm(block: FormBlock): readonly Block[] {
  const hasHelp = block.fields.some((field) => field.help !== undefined);
  if (hasHelp) {
    const hints = block.fields.flatMap(({ label, help }) => (help === undefined ? [] : [plain(`${label}: ${help}`)]));
    return [...hints, { ...block, fields: block.fields.map(({ help: _, ...field }) => field) }];
  }
  return [
    { kind: "text", tone: "heading", text: block.title },
    ...block.fields.flatMap(({ fact, label, value, problem }) => [
      ...(problem ? [{ kind: "text", tone: "problem", text: problem } as const] : []),
      plain(label),
      plain(`${block.topic} ${fact}=${value ?? "…"}`),
    ]),
  ];
}

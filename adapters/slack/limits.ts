/**
 * What Slack accepts, in UTF-16 characters or pieces. "Types" is the comment of the field in @slack/types 3.2.0,
 * which repeats https://docs.slack.dev/reference/block-kit; "own" is a choice of ours where nothing is published.
 */
export const LIMITS = {
  /** Blocks of one message: slackapi/bolt-js issue 2509. */
  messageBlocks: 50,
  /**
   * Characters of all blocks of one message. Not published: refused as `msg_blocks_too_long` from about 13,200
   * (slackapi/bolt-js issue 2509), and once at 11,341 counted without the containers (issue 2867). Ours counts them.
   */
  messageBudget: 12_000,
  /** What one empty block costs of that budget: a divider moved the limit by 125 (slackapi/bolt-js issue 2509). */
  blockCost: 125,
  /** Characters of one block that is cut by size (rows, buttons): own, so that several fit one message. */
  blockSize: 6_000,
  /** Tables of one message: Slack answers `only_one_table_allowed`; from several public projects, not from its pages. */
  messageTables: 1,
  /** `text` of a message is cut at 40,000; 3,000 is ours, so that a notification stays readable. */
  messageText: 3_000,
  /** A message without blocks; beyond 4,000 Slack advises against it (from memory). Room for one whole message of ours. */
  plainText: 12_000,
  /** Messages for one card: own, so that no card floods a channel. */
  cardMessages: 10,
  /** Types: header. */
  headerText: 150,
  /** Types: section text. Rich text has no published limit and is held to the same. */
  sectionText: 3_000,
  /** Types: text of a section field; context elements have no published limit and are held to the same. */
  contextText: 2_000,
  /** Types: context elements. */
  contextElements: 10,
  /** Types: actions elements. */
  actionElements: 25,
  /** Types: button text, value. */
  buttonText: 75,
  buttonValue: 2_000,
  /** Types: table. */
  tableRows: 100,
  tableCells: 20,
  /** Characters of one cell and of one table with its containers: own, so that a table leaves room for its caption. */
  cellText: 300,
  tableBudget: 10_000,
  /** Cells of a row that is written as one line: own. */
  lineCells: 5,
  /** Label, value and note of one row: own. */
  rowPart: 800,
  /** Types: view blocks, title and submit, private_metadata. */
  viewBlocks: 100,
  viewTitle: 24,
  /** Characters of a whole home tab: Slack refuses one above 250 kB (docs.slack.dev, views.publish); one may be three bytes. */
  homeSize: 80_000,
  viewMetadata: 3_000,
  /** Types: input label and hint, block_id. */
  inputLabel: 2_000,
  inputHint: 2_000,
  blockId: 255,
  /** Types: placeholder, plain_text_input max_length. */
  placeholder: 150,
  inputText: 3_000,
  /** Types: select options, radio options, option text and value (150 is said elsewhere for the text; 75 is safe). */
  selectOptions: 100,
  radioOptions: 10,
  /** Up to so many options are shown at once, which saves a tap with gloves on: own. */
  fewOptions: 5,
  /** More answers than this become a list that opens, so that a phone need not scroll past them: own. */
  manyAnswers: 15,
  optionText: 75,
  optionValue: 75,
  /** Text of a picture for screen readers, which Slack cuts at 1,000 (from memory); title of a file: own. */
  pictureAlt: 1_000,
  pictureTitle: 150,
  /** Name of a file: own. */
  fileName: 150,
  /** Sentence under a field of a form that was sent back: own. */
  fieldError: 300,
} as const;

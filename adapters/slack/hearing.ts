import { randomBytes } from "node:crypto";
import type { Desk, Inbound, Reply } from "../../src/desk.ts";
import type { Card, FormBlock } from "../../src/messages/card.ts";
import type { SentFile } from "../../src/ports/files.ts";
import { type AnswerSteps, openAnswerSteps } from "./answer-steps.ts";
import { type Delivered, rememberDeliveries } from "./deliveries.ts";
import type { DoorLog } from "./door-log.ts";
import { faultCard } from "./fault-card.ts";
import { writeFormMetadata } from "./form-metadata.ts";
import type { Heard, Place } from "./heard.ts";
import { LIMITS } from "./limits.ts";
import { renderModal } from "./render-modal.ts";
import { type Route, routeByChannel, routeByResponse } from "./route.ts";
import { type ReadKept, sendFiles } from "./send-files.ts";
import { type DrawPng, sendPictures } from "./send-pictures.ts";
import type { Pace } from "./settings.ts";
import type { SlackCalls } from "./slack-calls.ts";
import { fitRaw } from "./slack-text.ts";
import { withinTime } from "./wait.ts";
import type { WorkInFlight } from "./work-in-flight.ts";

/** A sentence under each of these fields. */
export type FieldProblems = Record<string, string>;

export interface HearingSettings {
  readonly desk: Desk;
  readonly pace: Pace;
  readonly log: DoorLog;
  readonly work: WorkInFlight;
  /** Draws charts; without it a chart is its words and numbers. */
  readonly drawPng?: DrawPng;
  /** Reads the photos and papers that an answer hands over; without it they are only named. */
  readonly readKept?: ReadKept;
}

/** Takes what was heard to the desk and its card back to Slack. Nothing here throws: what fails is logged. */
export class Hearing {
  readonly #settings: HearingSettings;
  readonly #deliveries = rememberDeliveries<Reply>();

  constructor(settings: HearingSettings) {
    this.#settings = settings;
  }

  /** Starts the answer and returns at once. @param after called when it is given, or could not be */
  answer(heard: Heard, calls: SlackCalls, after: () => void = () => {}): void {
    const { place } = heard;
    const inbound = withFiles(heard, calls);
    const steps = this.#openSteps(place, calls);
    const { isFirst, result } = this.#receive(inbound, steps);
    if (isFirst) this.#deliver(result, inbound, steps, (reply) => this.#give(reply, steps, heard, calls), after);
    else this.#settings.log.info({ delivery: inbound.delivery }, "delivered twice, answered once");
  }

  /** What to say to a form that was sent: problems to show in it, or nothing, and then it closes. */
  async answerForm(heardAt: Heard, calls: SlackCalls): Promise<FieldProblems | undefined> {
    const { inbound, place } = heardAt;
    const steps = this.#openSteps(place, calls);
    const { isFirst, result } = this.#receive(inbound, steps);
    const settled = result.then(
      (reply) => ({ problems: problemsOf(reply.card, inbound) }),
      (error: unknown) => ({ error }),
    );
    const inTime = await withinTime(settled, this.#settings.pace.formWait_ms);
    const problems = inTime && "error" in inTime ? this.#faultProblem(inTime.error, inbound) : inTime?.problems;
    if (problems !== undefined) steps.cancel();
    else if (isFirst) this.#deliver(result, inbound, steps, (reply) => this.#finish(reply.card, steps, heardAt, calls));
    return problems;
  }

  #receive(inbound: Inbound, steps: AnswerSteps): Delivered<Reply> {
    const { desk, work } = this.#settings;
    return this.#deliveries.once(inbound.delivery, async () => desk.receive(inbound, steps.show, work.signal));
  }

  #openSteps(place: Place, calls: SlackCalls): AnswerSteps {
    const { pace, log } = this.#settings;
    return openAnswerSteps(routeFor(place, calls), (card) => isWhispered(card, place), pace, log);
  }

  /** Sends what the desk answers, or that it failed; an answer that cannot be sent is kept by the desk and logged. */
  #deliver(
    result: Promise<Reply>,
    inbound: Inbound,
    steps: AnswerSteps,
    send: (reply: Reply) => Promise<void>,
    after: () => void = () => {},
  ): void {
    const work = result
      .then(
        (reply) => (reply.isRepeat ? undefined : send(reply)),
        (error: unknown) => steps.finish(faultCard(this.#logFault(error, inbound))),
      )
      .catch((error: unknown) => {
        this.#settings.log.error({ error, delivery: inbound.delivery }, "an answer could not be sent");
      })
      .finally(steps.cancel)
      .finally(after);
    this.#settings.work.track(work);
  }

  /** A form opens where Slack allows it; everything else, and a form that cannot open, is a message. */
  async #give(reply: Reply, steps: AnswerSteps, heard: Heard, calls: SlackCalls): Promise<void> {
    const { place } = heard;
    const form = findForm(reply.card);
    const isOpen = form !== undefined && (await this.#openForm(reply.card, form, place, calls));
    if (!isOpen) await this.#finish(reply.card, steps, heard, calls);
  }

  async #finish(card: Card, steps: AnswerSteps, { place, inbound }: Heard, calls: SlackCalls): Promise<void> {
    await steps.finish(card);
    const { drawPng, readKept, log, work } = this.#settings;
    const isPrivate = isWhispered(card, place);
    const { caller } = inbound;
    if (readKept && !work.signal.aborted) await sendFiles({ card, place, caller, isPrivate }, calls, readKept, log);
    // A whispered message cannot carry a file, and a file in the channel would show all what was for one: there the
    // table stands for the picture.
    if (drawPng === undefined || work.signal.aborted || isPrivate) return;
    await sendPictures(card, place, calls, drawPng, log);
  }

  async #openForm(card: Card, form: FormBlock, place: Place, calls: SlackCalls): Promise<boolean> {
    if (place.trigger === undefined) return false;
    try {
      await calls.openView(place.trigger, renderModal(card, form, writeFormMetadata(form.topic, place)));
      return true;
    } catch (error) {
      const said = { error, doing: `form ${form.topic}` };
      this.#settings.log.warn(said, "a form could not be opened and is sent as a message");
      return false;
    }
  }

  #faultProblem(error: unknown, inbound: Inbound): FieldProblems {
    const [field = ""] = Object.keys(inbound.form?.fields ?? {});
    return { [field]: faultCard(this.#logFault(error, inbound)).summary };
  }

  #logFault(error: unknown, { delivery, conversation }: Inbound): string {
    const id = randomBytes(4).toString("hex");
    this.#settings.log.error({ id, error, delivery, conversation }, "no answer could be given");
    return id;
  }
}

/** Files are fetched when the desk reads them, after Slack has its acknowledgement. */
function withFiles({ inbound, files = [] }: Heard, calls: SlackCalls): Inbound {
  if (files.length === 0) return inbound;
  const sent = files.map((file): SentFile => {
    const { name, size_B } = file;
    return { name, ...(size_B !== undefined && { size_B }), read: () => calls.readFile(file) };
  });
  return { ...inbound, files: sent };
}

function routeFor(place: Place, calls: SlackCalls): Route {
  if (place.responseUrl === undefined) return routeByChannel(calls, place);
  return routeByResponse(calls, place, place.responseUrl, place.isOwnQuestion === true);
}

/** Private cards, and the questions of a walk in an open channel, which are for one person. */
function isWhispered(card: Card, place: Place): boolean {
  const isAsked = card.blocks.some((block) => block.kind === "question");
  return (
    card.isPrivate === true ||
    place.isForAsker === true ||
    (isAsked && place.responseUrl !== undefined && place.thread === undefined)
  );
}

function findForm(card: Card): FormBlock | undefined {
  return card.blocks.find((block) => block.kind === "form");
}

/** Only of fields that stand in the modal: Slack would not know where to show others. */
function problemsOf(card: Card, { form }: Inbound): FieldProblems | undefined {
  const fields = findForm(card)?.fields ?? [];
  const problems = fields.flatMap(({ fact, problem }) =>
    problem === undefined || form?.fields[fact] === undefined
      ? []
      : [[fact, fitRaw(problem, LIMITS.fieldError)] as const],
  );
  return problems.length === 0 ? undefined : Object.fromEntries(problems);
}

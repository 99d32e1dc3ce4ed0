import type { RaisedCaution } from "../declaration/answer.ts";
import type { CautionSetting } from "../messages/build-caution-blocks.ts";
import type { KeptMark } from "../ports/store.ts";
import type { ConversationState, ShownCaution } from "./state.ts";

/** What was done about cautions in a conversation, and where its people are. */
export interface CautionLog {
  readonly marks: readonly KeptMark[];
  /** IANA time zone name. */
  readonly timeZone: string;
}

/** Enough for every caution of a long day; a stop is kept beyond it. */
const MOST_SHOWN = 60;

/**
 * What the cautions of an answer are shown beside.
 * @param revised the answer that this one puts right: what only that one raised no longer stands
 */
export function cautionSetting(
  state: ConversationState,
  raised: readonly RaisedCaution[],
  { marks, timeZone }: CautionLog,
  revised?: string,
): CautionSetting {
  const before = state.shown ?? [];
  const standing = setAside(before, raised, revised).filter(isStanding);
  return { marks, timeZone, before, standing };
}

/** The state once an answer's cautions were shown: the newest data of each, and what still stands of earlier ones. */
export function rememberShown(
  state: ConversationState,
  raised: readonly RaisedCaution[],
  walk: string,
  revised?: string,
): ConversationState {
  const now = raised.map(
    ({ id, severity, data, local }): ShownCaution => ({ id, severity, data, walk, ...(local && { local }) }),
  );
  const all = [...setAside(state.shown ?? [], raised, revised), ...now];
  const kept = all.filter((one, place) => isStanding(one) || place >= all.length - MOST_SHOWN);
  return kept.length === 0 && state.shown === undefined ? state : { ...state, shown: kept };
}

/** A stop that nothing newer has replaced. */
function isStanding({ severity, isPast }: ShownCaution): boolean {
  return severity === "stop" && isPast !== true;
}

/** Earlier cautions; those that this answer raises anew, or does away with by putting their own answer right, are past. */
function setAside(
  before: readonly ShownCaution[],
  raised: readonly RaisedCaution[],
  revised: string | undefined,
): readonly ShownCaution[] {
  return before.map((one) =>
    one.walk === revised || raised.some(({ id }) => id === one.id) ? { ...one, isPast: true } : one,
  );
}

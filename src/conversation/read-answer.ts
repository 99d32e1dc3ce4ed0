import type { KnownFact } from "../declaration/facts.ts";
import { LANGUAGES } from "../messages/language.ts";
import { sayProblem } from "../messages/say-problem.ts";
import { factOf, speakOf } from "../messages/voice.ts";
import { refuseValue } from "./check-fact.ts";
import { parseAnswer } from "./grammar/parse-answer.ts";
import type { Scene } from "./turn.ts";

export type ReadAnswer =
  | { readonly ok: true; readonly known: KnownFact }
  | { readonly ok: false; readonly why: string };

/** Reads what was typed or pressed for one fact of a topic. */
export function readAnswer(scene: Scene, topic: string, factId: string, text: string): ReadAnswer {
  const voice = speakOf(scene.voice, topic);
  // Words of every language are understood; a button may be older than the language.
  const texts = LANGUAGES.flatMap((one) => scene.library.texts[one].topics.get(topic)?.facts[factId] ?? []);
  const parsed = parseAnswer(text, factId, factOf(voice, factId).spec, texts, {
    ...scene.reader,
    ...(scene.books?.today !== undefined && { today: scene.books.today }),
  });
  if (!parsed.ok) return { ok: false, why: sayProblem(voice, parsed.problem) };
  const why = refuseValue(voice, factId, parsed.value);
  return why === undefined
    ? { ok: true, known: { value: parsed.value, from: "asked", typed: text } }
    : { ok: false, why };
}

import { preferenceButtons } from "../messages/build-help-card.ts";
import { buildNoticeCard } from "../messages/build-notice-card.ts";
import type { Button } from "../messages/card.ts";
import type { Language } from "../messages/language.ts";
import { quiet } from "../messages/notes.ts";
import type { Reader } from "../messages/voice.ts";
import type { UnitSystem } from "../units/quantity-kinds.ts";
import { show, voiceOf } from "./scene.ts";
import type { PastState } from "./state.ts";
import { buildTableCard } from "./table.ts";
import type { Decision, Scene } from "./turn.ts";

/** Turns to other units, or says which are used now. */
export function changeUnits(scene: Scene, units: UnitSystem | undefined): Decision {
  const { reader } = scene;
  const now = units ?? reader.units;
  const changed = now === reader.units ? {} : { units: reader.units };
  const turned = readAs(scene, { ...reader, units: now });
  return tell(turned, turned.voice.common.unitsTitle, turned.voice.common.unitsNow[now], changed);
}

/** Turns to the other language, or says which is used now. */
export function changeLanguage(scene: Scene, language: Language | undefined): Decision {
  const { reader } = scene;
  const now = language ?? reader.language;
  const changed = now === reader.language ? {} : { language: reader.language };
  const turned = readAs(scene, { ...reader, language: now });
  return tell(turned, turned.voice.common.languageTitle, turned.voice.common.languageNow, changed);
}

/** The same scene for a reader with other preferences. */
export function readAs(scene: Scene, reader: Reader): Scene {
  return { ...scene, reader, voice: voiceOf(scene, reader) };
}

function tell(scene: Scene, title: string, text: string, changed: Pick<PastState, "units" | "language">): Decision {
  const { walk, last } = scene.state;
  const { common } = scene.voice;
  const table = walk && buildTableCard(scene.voice, walk, [quiet(text)]);
  if (table !== undefined) return show(scene, scene.state, table, changed);
  const again: Button[] = last === undefined ? [] : [{ label: common.showAgain, say: common.say.again }];
  const undo: Button[] = Object.keys(changed).length === 0 ? [] : [{ label: common.undo, say: common.say.undo }];
  const card = buildNoticeCard(title, [text], [...again, ...undo, ...preferenceButtons(scene.voice)]);
  return show(scene, scene.state, card, changed);
}

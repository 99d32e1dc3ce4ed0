import { buildNoticeCard } from "../messages/build-notice-card.ts";
import { quiet } from "../messages/notes.ts";
import { findTopic } from "./find-named.ts";
import { unpark, withoutWalk } from "./past.ts";
import { show } from "./scene.ts";
import type { ConversationState, Walk } from "./state.ts";
import { askAgain, parkedNote, proceed, titleOf } from "./table.ts";
import type { Decision, Scene } from "./turn.ts";

/** Goes on with a walk: the open one, one set aside here, or one that is open in another conversation. */
export function resume(scene: Scene, what: string): Decision {
  const { common } = scene.voice;
  const { walk, parked = [] } = scene.state;
  const topic = what === "" ? undefined : findTopic(scene.library, what);
  const isWanted = (one: Walk) => topic === undefined || one.topic === topic;
  if (walk !== undefined && isWanted(walk))
    return askAgain(scene, walk, [quiet(common.resumed(titleOf(scene.voice, walk)))]);
  const waiting = [...parked].reverse().find(isWanted);
  if (waiting !== undefined) return goOn(scene, scene.state, waiting, common.resumed(titleOf(scene.voice, waiting)));
  const away = scene.elsewhere?.state.walk;
  if (away !== undefined && isWanted(away)) return carryOver(scene, away);
  const help = { label: common.help, say: common.say.help() };
  return show(scene, scene.state, buildNoticeCard(common.resume, [common.nothingToResume], [help]));
}

function goOn(scene: Scene, state: ConversationState, walk: Walk, said: string): Decision {
  const { walk: open } = state;
  const notes = [...(open === undefined ? [] : [parkedNote(scene.voice, open)]), quiet(said)];
  return proceed(scene, withoutWalk(unpark(state, walk.id)), walk, notes);
}

/** Brings a walk over from another conversation. Undo leaves it here set aside, so that it is never lost. */
function carryOver(scene: Scene, walk: Walk): Decision {
  const { elsewhere } = scene;
  if (elsewhere === undefined) return askAgain(scene, walk, []);
  const arrived = { ...scene.state, parked: [...(scene.state.parked ?? []), walk] };
  const left = { conversation: elsewhere.conversation, state: withoutWalk(elsewhere.state) };
  const here: Scene = { ...scene, state: arrived, before: arrived, carriedFrom: left };
  return goOn(here, arrived, walk, scene.voice.common.movedHere(titleOf(scene.voice, walk)));
}

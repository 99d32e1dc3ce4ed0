import { buildNoticeCard } from "../messages/build-notice-card.ts";
import { answerWalk } from "./answer-walk.ts";
import { parseCommand } from "./commands.ts";
import { sayJob } from "./job-shorthand.ts";
import { markCaution } from "./mark-caution.ts";
import { runCommand } from "./run-command.ts";
import { openScene, show } from "./scene.ts";
import { takeRequest } from "./start-request.ts";
import { resumeButtons } from "./table.ts";
import { takeAimed } from "./take-aimed.ts";
import { takeForm } from "./take-form.ts";
import type { Decision, Scene, Turn } from "./turn.ts";

/** Nobody types more than this on purpose. */
const LONGEST_MESSAGE = 2000;

/** Decides what one message means: a card to show, or a topic to run before `finish` makes the card. */
export function converse(turn: Turn): Decision {
  const scene = openScene(turn);
  const sent = [scene.text, ...Object.values(turn.form?.fields ?? {})];
  if (sent.some((text) => text.length > LONGEST_MESSAGE)) return refuseLong(scene);
  if (turn.form !== undefined) return takeForm(scene, turn.form);
  const marked = markCaution(scene);
  if (marked !== undefined) return marked;
  if (turn.aim !== undefined) return takeAimed(scene, turn.aim);
  const command = parseCommand(scene.text);
  const steered = command && runCommand(scene, command);
  if (steered !== undefined) return steered;
  const said = sayJob(scene);
  return said.state.walk === undefined ? takeRequest(said) : answerWalk(said, said.state.walk);
}

function refuseLong(scene: Scene): Decision {
  const { common } = scene.voice;
  const said = common.tooLong(LONGEST_MESSAGE.toLocaleString("en-US"));
  const card = buildNoticeCard(common.notUnderstoodTitle, [said], resumeButtons(scene, scene.state), "problem");
  return show(scene, scene.state, card);
}

import { describe, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import type { Reader } from "../../src/messages/voice.ts";
import { buttonOf, buttonsOf, headlineOf, promptOf, startTalk, textsOf } from "../support/talk.ts";

/** What a card shows, as far as a step cares. */
interface Shown {
  readonly title?: string;
  readonly prompt?: string;
  readonly headline?: string;
  /** Texts that stand in it, in this order. */
  readonly says?: readonly string[];
  /** Labels that are among its buttons. */
  readonly buttons?: readonly string[];
  readonly progress?: string;
}
/** A message typed, or a label pressed on the card before. */
type Step = readonly [message: string | { readonly press: string }, shown: Shown];
interface Dialogue {
  readonly name: string;
  readonly reader?: Reader;
  readonly steps: readonly Step[];
}

const SPANISH: Reader = { language: "es", units: "si" };
const FULL = "barrel 55 gal drum, hose 5 gpm";

const DIALOGUES: readonly Dialogue[] = [
  {
    name: "a whole request is answered at once",
    steps: [[FULL, { headline: "Full in 11 min", buttons: ["How?", "Change: Cold water", "Half of it"] }]],
  },
  {
    name: "a request that lacks one fact asks only for that",
    steps: [
      ["barrel 55 gal drum", { prompt: "How much does the hose give?", progress: "1 of 1", buttons: ["Stop"] }],
      ["5 gpm", { headline: "Full in 11 min" }],
    ],
  },
  {
    name: "a bare request also asks what people usually know",
    steps: [
      [
        "barrel",
        { title: "Filling a barrel", prompt: "How large is the drum?", progress: "1 of 4", buttons: ["30 gal"] },
      ],
      [{ press: "55 gal" }, { says: ["Drum: 55 gal."], prompt: "How much does the hose give?", progress: "2 of 4" }],
      ["5", { says: ["Hose: “5” read as 5 gpm."], prompt: "How cold is the water?", progress: "3 of 4" }],
      [{ press: "40 °F" }, { prompt: "Is the drum lined?", progress: "4 of 4" }],
      [{ press: "No" }, { headline: "Full in 11 min" }],
    ],
  },
  {
    name: "skip takes the default and says so, in words and by its button",
    steps: [
      ["barrel", {}],
      ["55 gal", {}],
      ["5 gpm", { buttons: ["Don't know (take 50 °F)"] }],
      [
        "I don't know",
        {
          says: ["Cold water: not known, so I take 50 °F (common practice)."],
          prompt: "Is the drum lined?",
        },
      ],
      [{ press: "Don't know (take Yes)" }, { headline: "Full in 11 min" }],
    ],
  },
  {
    name: "a required fact cannot be skipped and says what to type",
    steps: [
      ["barrel", {}],
      [
        "skip",
        {
          says: ["I cannot answer without this: Drum. There is no safe value to assume. Type, for example, 30 gal."],
          prompt: "How large is the drum?",
        },
      ],
    ],
  },
  {
    name: "back returns to the question before and keeps what was said",
    steps: [
      ["barrel", {}],
      ["55 gal", {}],
      ["back", { says: ["Back one question."], prompt: "How large is the drum?", buttons: ["Keep 55 gal", "30 gal"] }],
      [{ press: "Keep 55 gal" }, { prompt: "How much does the hose give?", progress: "2 of 4" }],
    ],
  },
  {
    name: "back on the first question says that it is the first",
    steps: [
      ["barrel", {}],
      ["back", { says: ["This is the first question. Answer it, or say stop."], prompt: "How large is the drum?" }],
    ],
  },
  {
    name: "an earlier answer changes by its key, by change, and by its own old button",
    steps: [
      ["barrel", {}],
      ["55 gal", {}],
      ["drum=30gal", { says: ["Changed: Drum, 55 gal → 30 gal."], prompt: "How much does the hose give?" }],
      ["change drum", { prompt: "How large is the drum?", buttons: ["Keep 30 gal"] }],
      ["40 gal", { says: ["Drum: 40 gal."], prompt: "How much does the hose give?" }],
    ],
  },
  {
    name: "stop hides nothing and resume goes on where it was",
    steps: [
      ["barrel", {}],
      ["55 gal", {}],
      ["stop", { title: "Stopped", says: ["Stopped: Filling a barrel. Your answers are kept; say resume to go on."] }],
      ["stop", { says: ["There is no open question to stop."], buttons: ["Go on: Filling a barrel"] }],
      [
        "resume",
        { says: ["Going on with: Filling a barrel."], prompt: "How much does the hose give?", progress: "2 of 4" },
      ],
    ],
  },
  {
    name: "a new question sets the open one aside and resume returns to it",
    steps: [
      ["barrel", {}],
      [
        "ramp run=12ft rise=12in",
        {
          says: ["Set aside: Filling a barrel. Say resume to return to it."],
          headline: "Slope 8.3 %",
          buttons: ["Go on: Filling a barrel"],
        },
      ],
      [{ press: "Go on: Filling a barrel" }, { prompt: "How large is the drum?" }],
    ],
  },
  {
    name: "the word of the open question alone asks it again",
    steps: [
      ["barrel", {}],
      ["barrel", { says: ["Your question is still open."], prompt: "How large is the drum?" }],
    ],
  },
  {
    name: "several facts in one message fill the walk",
    steps: [
      ["barrel", {}],
      ["hose 5 gpm and cold 45F", { says: ["Hose: 5 gpm.", "Cold water: 45 °F."], prompt: "How large is the drum?" }],
      ["55 gal", { prompt: "Is the drum lined?", progress: "4 of 4" }],
    ],
  },
  {
    name: "follow-ups change one thing and say what changed",
    steps: [
      [FULL, {}],
      ["what about 150F warm", { says: ["Changed: Warm water, 100 °F → 150 °F."], headline: "Full in 11 min" }],
      ["hose=2.5gpm", { says: ["Changed: Hose, 5 gpm → 2.5 gpm."], headline: "Full in 22 min" }],
      ["with 30 gal drum", { says: ["Changed: Drum, 55 gal → 30 gal."], headline: "Full in 12 min" }],
      ["30 gal drum", { says: ["That is the value I had already; the answer is the same."] }],
    ],
  },
  {
    name: "a follow-up that fits two facts is asked, by button and by name",
    steps: [
      [FULL, {}],
      [
        "60F",
        { prompt: "“60F”: is that Cold water or Warm water?", buttons: ["Cold water", "Warm water", "None of these"] },
      ],
      [{ press: "Warm water" }, { says: ["Changed: Warm water, 100 °F → 60 °F."] }],
      ["60F", {}],
      ["cold", { says: ["Changed: Cold water, 50 °F → 60 °F."] }],
    ],
  },
  {
    name: "the only fact that fits is asked too, and yes is enough",
    steps: [
      [FULL, {}],
      ["150F", { prompt: "“150F”: is that Warm water?" }],
      ["yes", { says: ["Changed: Warm water, 100 °F → 150 °F."] }],
    ],
  },
  {
    name: "the same question put anew replaces one that was unclear, without setting it aside",
    steps: [
      [FULL, {}],
      ["150F", { prompt: "“150F”: is that Warm water?" }],
      ["barrel 30 gal drum, hose 5 gpm", { headline: "Full in 6 min" }],
      ["resume", { says: ["There is nothing to resume. Ask a new question."] }],
    ],
  },
  {
    name: "none of these leaves an unclear value out and says so",
    steps: [
      ["barrel 55 gal, 60F", { prompt: "“60F”: is that Cold water or Warm water?" }],
      [{ press: "None of these" }, { says: ["Left out: “60F”."], prompt: "How much does the hose give?" }],
    ],
  },
  {
    name: "an unknown word is named, and the question goes on without it only when told",
    steps: [
      ["barrel 55 gal softener", { prompt: "I do not know “softener” in a question about: Filling a barrel." }],
      [{ press: "Go on without it" }, { says: ["Left out: “softener”."], prompt: "How much does the hose give?" }],
    ],
  },
  {
    name: "a misspelt topic is offered right in the same request",
    steps: [
      [
        "barel 55 gal 5 gpm",
        { says: ["I do not know “barel”.", "Did you mean:", "Try one of these:"], buttons: ["barrel"] },
      ],
      [{ press: "barrel" }, { headline: "Full in 11 min" }],
    ],
  },
  {
    name: "a misspelt fact word is offered right in the same request",
    steps: [
      ["barrel 55 gal hosse=5gpm", { buttons: ["hose"] }],
      [{ press: "hose" }, { headline: "Full in 11 min" }],
      ["resume", { says: ["There is nothing to resume. Ask a new question."] }],
    ],
  },
  {
    name: "out of range says the range in the reader's units and what to type",
    steps: [
      [
        "barrel 55 gal hose=900gpm",
        {
          says: [
            "Hose: 900 gpm is outside what I can work with. Type a value from 0.1 gpm to 50 gpm, for example 0.1 gpm.",
          ],
          prompt: "How much does the hose give?",
        },
      ],
      ["5 gpm", { headline: "Full in 11 min" }],
    ],
  },
  {
    name: "what only the topic can refuse is asked again with its reason",
    steps: [
      [`${FULL} warm=40F`, { says: ["Warm (40 °F) must be above cold (50 °F)."], prompt: "How warm shall it be?" }],
      ["90F", { headline: "Full in 11 min" }],
    ],
  },
  {
    name: "what cannot be read says why and what to type",
    steps: [
      ["barrel", {}],
      [
        "banana",
        { says: ["I cannot read “banana” as Drum. Type, for example, 30 gal."], prompt: "How large is the drum?" },
      ],
      ["55 gal", {}],
      ["hose is 5 gpm", {}],
      ["cold=60 psi", { says: ["“60 psi” has a unit that does not fit Cold water. Type, for example, 50 °F."] }],
    ],
  },
  {
    name: "a fact given twice is asked",
    steps: [
      [
        "barrel drum=55gal drum=30gal hose=5gpm",
        { says: ["Drum was given twice with different values. Which one is right?"], prompt: "How large is the drum?" },
      ],
    ],
  },
  {
    name: "half a helper is refused",
    steps: [
      [`${FULL} helpers=2.5`, { says: ["Helpers is a whole number, so “2.5” does not fit. Type, for example, 2."] }],
    ],
  },
  {
    name: "how shows all results, one by its name, and not a question that begins with how",
    steps: [
      ["how", { says: ["There is no answer here yet. Ask a question first."] }],
      [FULL, {}],
      [{ press: "How?" }, { title: "How: Filling a barrel", says: ["Time to fill: 11 min", "t = V / Q"] }],
      ["how warming", { says: ["Warming: 50 °F", "dT = warm - cold"], buttons: ["How: Plug"] }],
      ["how about 150F warm", { says: ["Changed: Warm water, 100 °F → 150 °F."] }],
    ],
  },
  {
    name: "change alone lists the facts; an unknown one is named",
    steps: [
      [FULL, {}],
      ["change", { buttons: ["Drum", "Hose", "Material"] }],
      [{ press: "Hose" }, { prompt: "How much does the hose give?", buttons: ["Keep 5 gpm"] }],
      ["2.5 gpm", { says: ["Changed: Hose, 5 gpm → 2.5 gpm."] }],
      ["change colour", { says: ["I do not know “colour” in: Filling a barrel. Which of these is it?"] }],
      ["change cold to 45F", { says: ["Changed: Cold water, 50 °F → 45 °F."] }],
    ],
  },
  {
    name: "where says that the summaries of the team cannot come to a conversation that is no channel",
    steps: [
      [
        "where",
        {
          says: [
            "The summaries of the team cannot come here. Ask me the same in the channel that they should come to, in Slack or Teams.",
          ],
        },
      ],
    ],
  },
  {
    name: "undo takes back answers, stop, back, and preferences, and says when nothing is left",
    steps: [
      ["undo", { says: ["There is nothing to undo here."] }],
      [FULL, {}],
      ["hose=2.5gpm", { headline: "Full in 22 min" }],
      ["undo", { says: ["Taken back. This is the answer before it."], headline: "Full in 11 min" }],
      [
        "units si",
        { says: ["SI units from now on: liters, °C, kPa, meters."], buttons: ["Show the answer again", "Undo"] },
      ],
      [{ press: "Undo" }, { says: ["Taken back: US units again."] }],
      ["ramp", {}],
      ["stop", {}],
      ["undo", { says: ["Taken back."], prompt: "How long is the ramp?" }],
      ["undo", { says: ["Taken back."] }],
      ["undo", { says: ["Taken back.", "Nothing is open now."] }],
      ["undo", { says: ["There is nothing to undo here."] }],
    ],
  },
  {
    name: "units and language turn in one message and the answer can be seen again",
    steps: [
      [FULL, {}],
      ["metric", { says: ["SI units from now on: liters, °C, kPa, meters."] }],
      [{ press: "Show the answer again" }, { headline: "Full in 11 min" }],
      ["español", { title: "Idioma", says: ["Desde ahora, en español."] }],
      ["otra vez", { title: "Llenar un barril", headline: "Lleno en 11 min" }],
      ["english", { says: ["English from now on."] }],
      ["units", { says: ["SI units from now on: liters, °C, kPa, meters."], buttons: ["US units"] }],
    ],
  },
  {
    name: "turning units inside a walk asks the same question in the new units",
    steps: [
      ["barrel", { buttons: ["30 gal"] }],
      [
        "units si",
        {
          says: ["SI units from now on: liters, °C, kPa, meters."],
          prompt: "How large is the drum?",
          buttons: ["114 L"],
        },
      ],
      ["200", { says: ["Drum: “200” read as 200 L."] }],
    ],
  },
  {
    name: "help explains the open question, a topic, and everything",
    steps: [
      ["help", { title: "What I can answer", buttons: ["Help: Filling a barrel", "Español", "SI units"] }],
      ["help barrel", { title: "Filling a barrel", buttons: [FULL, "As a form"] }],
      ["help nonsense", { says: ["I have no question called “nonsense”."] }],
      ["barrel", {}],
      [
        "help",
        {
          says: ["Drum: 1 gal to 500 gal. I ask if it is not said.", "You can also say back, skip, stop, or help all."],
          prompt: "How large is the drum?",
        },
      ],
      ["help all", { title: "What I can answer", buttons: ["Go on: Filling a barrel"] }],
    ],
  },
  {
    name: "a greeting is answered with questions to try",
    steps: [
      ["hello", { title: "Oldhand", buttons: [FULL, "ramp run=12ft rise=12in", "Help", "Español", "SI units"] }],
      ["", { title: "Oldhand" }],
      ["barrel", {}],
      ["hi", { says: ["Your question is still open."], buttons: ["Go on: Filling a barrel"] }],
    ],
  },
  {
    name: "what is not understood leads to something that is",
    steps: [
      ["the weather tomorrow", { title: "I did not follow that", buttons: [FULL, "Help"] }],
      ["???", { title: "What I can answer" }],
      ["x".repeat(2001), { says: ["That message is too long for me. Keep it under 2,000 characters."] }],
      ["skip", { says: ["Nothing is open now."] }],
      ["back", { says: ["There is no answer here yet. Ask a question first."] }],
      ["again", { says: ["There is no answer here yet. Ask a question first."] }],
      ["resume", { says: ["There is nothing to resume. Ask a new question."] }],
    ],
  },
  {
    name: "Spanish: a bare question, with every command",
    reader: SPANISH,
    steps: [
      ["hola", { title: "Oldhand", buttons: ["Ayuda", "English", "Unidades de EE. UU."] }],
      [
        "barrel",
        { title: "Llenar un barril", prompt: "¿De qué tamaño es el tambor?", progress: "1 de 4", buttons: ["114 L"] },
      ],
      [
        "omitir",
        {
          says: [
            "No puedo responder sin este dato: Tambor. No hay un valor seguro que suponer. Escriba, por ejemplo, 114 L.",
          ],
        },
      ],
      ["200 litros", { says: ["Tambor: 200 L."], prompt: "¿Cuánto da la manguera?" }],
      ["atrás", { says: ["Una pregunta atrás."], buttons: ["Dejar 200 L"] }],
      ["200 L", {}],
      ["20", { says: ["Manguera: “20” leído como 20 L/min."], prompt: "¿Qué tan fría está el agua?" }],
      [
        "no sé",
        {
          says: ["Agua fría: no se sabe, así que tomo 10 °C (práctica común)."],
        },
      ],
      ["parar", { title: "Parado" }],
      ["seguir", { prompt: "¿El tambor está forrado?", buttons: ["Sí", "No"] }],
      [{ press: "Sí" }, { headline: "Lleno en 10 min" }],
      ["¿cómo?", { title: "Cómo se calcula: Llenar un barril" }],
      ["y con agua tibia a 50 C", { says: ["Cambio: Agua tibia, 38 °C → 50 °C."] }],
      ["deshacer", { says: ["Anulado. Esta es la respuesta anterior."] }],
      ["cambiar manguera", { prompt: "¿Cuánto da la manguera?" }],
      ["12,5", { says: ["Cambio: Manguera, 20 L/min → 12.5 L/min."], headline: "Lleno en 16 min" }],
      ["ayuda barrel", { title: "Llenar un barril" }],
      ["formulario barrel", { title: "Llenar un barril" }],
      ["unidades us", { says: ["Desde ahora, unidades de EE. UU.: galones, °F, psi, pies."] }],
      ["idioma en", { says: ["English from now on."] }],
    ],
  },
];

describe.each(DIALOGUES)("$name", ({ reader, steps }) => {
  test(`${steps.length} messages`, () => {
    const talk = startTalk(reader);
    let card: Card | undefined;
    for (const [message, shown] of steps) {
      const label = typeof message === "string" ? undefined : message.press;
      if (typeof message === "string") card = talk.say(message);
      else if (card !== undefined && label !== undefined) card = talk.press(buttonOf(card, label));
      if (card === undefined) throw new Error("a dialogue begins with a message");
      expectShown(card, shown, typeof message === "string" ? message : `[${message.press}]`);
    }
  });
});

function expectShown(card: Card, shown: Shown, after: string): void {
  const { title, prompt, headline, says, buttons, progress } = shown;
  if (title !== undefined) expect(card.title, after).toBe(title);
  if (prompt !== undefined) expect(promptOf(card), after).toBe(prompt);
  if (headline !== undefined) expect(headlineOf(card), after).toBe(headline);
  if (says !== undefined) expect(textsOf(card).slice(0, says.length), after).toEqual(says);
  for (const label of buttons ?? [])
    expect(
      buttonsOf(card).map((button) => button.label),
      after,
    ).toContain(label);
  const question = card.blocks.find((block) => block.kind === "question");
  if (progress !== undefined) expect(question?.progress, after).toBe(progress);
}

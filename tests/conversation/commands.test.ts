import { expect, test } from "vitest";
import { type Command, dropFollowUpLead, parseCommand, readCancel } from "../../src/conversation/commands.ts";
import { LANGUAGES } from "../../src/messages/language.ts";
import { COMMON } from "../../src/messages/voice.ts";

const READ: readonly (readonly [string, Command | undefined])[] = [
  ["Back", { kind: "back" }],
  ["ATRÁS", { kind: "back" }],
  ["I don't know.", { kind: "skip" }],
  ["no sé", { kind: "skip" }],
  ["no se", { kind: "skip" }],
  ["no", undefined],
  ["si", undefined],
  ["sí", undefined],
  ["stop!", { kind: "stop" }],
  ["para", { kind: "stop" }],
  ["para 4 personas", undefined],
  ["where", { kind: "where" }],
  ["¿Dónde estoy?", { kind: "where" }],
  ["undo", { kind: "undo" }],
  ["deshacer", { kind: "undo" }],
  ["otra vez", { kind: "again" }],
  ["", { kind: "welcome" }],
  ["¡Hola!", { kind: "welcome" }],
  ["?", { kind: "help", what: "" }],
  ["¿?", { kind: "help", what: "" }],
  ["help", { kind: "help", what: "" }],
  ["/help mix", { kind: "help", what: "mix" }],
  ["ayuda   mix", { kind: "help", what: "mix" }],
  ["helpful", undefined],
  ["how?", { kind: "how", what: "" }],
  ["¿Cómo?", { kind: "how", what: "" }],
  ["how tank_volume_minimum", { kind: "how", what: "tank volume minimum" }],
  ["resume mix", { kind: "resume", what: "mix" }],
  ["continuar", { kind: "resume", what: "" }],
  ["change line pressure", { kind: "change", what: "line pressure" }],
  ["formulario mix", { kind: "form", what: "mix" }],
  ["link 123 456", { kind: "link", what: "123 456" }],
  ["units si", { kind: "units", units: "si" }],
  ["unidades métricas", { kind: "units", units: "si" }],
  ["units metric", { kind: "units", units: "si" }],
  ["use metric", { kind: "units", units: "si" }],
  ["units imperial", { kind: "units", units: "us" }],
  ["units", { kind: "units", units: undefined }],
  ["units furlong", undefined],
  ["language es", { kind: "language", language: "es" }],
  ["en español", { kind: "language", language: "es" }],
  ["Español", { kind: "language", language: "es" }],
  ["en inglés", { kind: "language", language: "en" }],
  ["idioma", { kind: "language", language: undefined }],
  ["language klingon", undefined],
  ["80 gal", undefined],
];

test.each(READ)("%j is read as %o", (text, command) => {
  expect(parseCommand(text)).toEqual(command);
});

test.each(LANGUAGES)("every command that a %s button says is understood", (language) => {
  const { say, sayOtherLanguage } = COMMON[language];
  expect(parseCommand(sayOtherLanguage)?.kind).toBe("language");
  const plain = { back: say.back, skip: say.skip, stop: say.stop, undo: say.undo, again: say.again };
  for (const [kind, text] of Object.entries(plain)) expect(parseCommand(text)).toEqual({ kind });
  expect(parseCommand(say.help())).toEqual({ kind: "help", what: "" });
  expect(parseCommand(say.help("mix"))).toEqual({ kind: "help", what: "mix" });
  expect(parseCommand(say.resume("mix"))).toEqual({ kind: "resume", what: "mix" });
  expect(parseCommand(say.how("x_y"))).toEqual({ kind: "how", what: "x y" });
  expect(parseCommand(say.change("cold"))).toEqual({ kind: "change", what: "cold" });
  expect(parseCommand(say.form("mix"))).toEqual({ kind: "form", what: "mix" });
  expect(parseCommand(say.units("si"))).toEqual({ kind: "units", units: "si" });
  expect(parseCommand(say.language("en"))).toEqual({ kind: "language", language: "en" });
  expect(readCancel(say.cancel("0a1b2c3d"))).toBe("0a1b2c3d");
});

test.each([
  ["cancel", ""],
  ["¡Cancelar!", ""],
  ["cancele", ""],
  ["Cancelar 0A1B2C3D", "0a1b2c3d"],
  ["cancel schedule", undefined],
  ["cancel the second order", undefined],
  ["stop", undefined],
  ["parar", undefined],
])("%j calls off %j", (text, work) => expect(readCancel(text)).toBe(work));

test.each(["cancel", "cancelar", "cancele"])("%s alone stops a guided walk as well", (text) => {
  expect(parseCommand(text)).toEqual({ kind: "stop" });
});

test.each([
  ["What about 150F hot", "150F hot"],
  ["¿Y si 150F?", "150F?"],
  ["qué tal 150F", "150F"],
  ["with 60 psi", "60 psi"],
  ["without it", "without it"],
  ["and", "and"],
  ["150F", "150F"],
])("%j follows on with %j", (text, rest) => {
  expect(dropFollowUpLead(text)).toBe(rest);
});

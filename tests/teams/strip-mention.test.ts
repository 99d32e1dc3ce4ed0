import fc from "fast-check";
import { expect, test } from "vitest";
import { stripMention } from "../../adapters/teams/strip-mention.ts";

const BOT = { id: "28:oldhand", name: "Old Hand" };
const mention = (text: string, mentioned: object = BOT) => ({ type: "mention", text, mentioned });

test.each([
  { name: "the mention as Teams writes it", text: "<at>Old Hand</at> mix 135", said: "mix 135" },
  { name: "a hard space as an entity", text: "<at>Old Hand</at>&nbsp;mix 135", said: "mix 135" },
  { name: "a hard space as a character", text: "<at>Old\u00A0Hand</at>\u00A0mix 135", said: "mix 135" },
  { name: "a hard space inside the name", text: "<at>Old&nbsp;Hand</at> mix 135", said: "mix 135" },
  { name: "odd spacing and capitals", text: "  <at> old  hand </at>mix 135 ", said: "mix 135" },
  { name: "attributes in the tag", text: `<at id="0">Old Hand</at> mix 135`, said: "mix 135" },
  { name: "the mention at the end", text: "mix 135 <at>Old Hand</at>", said: "mix 135" },
  { name: "two mentions of the bot", text: "<at>Old Hand</at> mix <at>Old Hand</at> 135", said: "mix   135" },
  { name: "an at sign and the name", text: "@Old Hand mix 135", said: "mix 135" },
  { name: "an at sign, the name and a colon", text: "@oldhand: mix 135", said: ": mix 135" },
  { name: "nothing else", text: "<at>Old Hand</at>&nbsp;", said: "" },
  { name: "somebody else too", text: "<at>Old Hand</at> ask <at>Ben &amp; Co</at>", said: "ask Ben & Co" },
  { name: "a longer name", text: "@oldhandy mix 135", said: "@oldhandy mix 135" },
  { name: "no mention at all", text: "old hand mix 135", said: "old hand mix 135" },
  { name: "an unclosed tag", text: "<at>Old Hand mix 135", said: "<at>Old Hand mix 135" },
])("leaves “$said” of $name", ({ text, said }) => {
  expect(stripMention({ text, recipient: BOT, entities: [mention("<at>Old Hand</at>")] })).toBe(said);
});

test("knows the name that a mention gives the bot, when it is another than its own", () => {
  const activity = { text: "<at>Helper</at> mix", recipient: BOT, entities: [mention("<at>Helper</at>")] };
  expect(stripMention(activity)).toBe("mix");
  expect(stripMention({ ...activity, entities: [mention("<at>Helper</at>", { id: "29:ben" })] })).toBe("Helper mix");
});

test.each([
  { text: "5 &lt; 6 &amp;&amp; 7 &gt; 3", said: "5 < 6 && 7 > 3" },
  { text: "6&#39;3&quot; &#x2019; &apos;", said: `6'3" ’ '` },
  { text: "&amp;lt; stays", said: "&lt; stays" },
  { text: "&unknown; &#x110000; &; a&b", said: "&unknown; &#x110000; &; a&b" },
])("turns $text back into what was typed", ({ text, said }) => {
  expect(stripMention({ text, recipient: BOT })).toBe(said);
});

test("never fails on any text, and reads 60,000 opening tags at once", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 200 }), (text) => {
      expect(typeof stripMention({ text: `<at>${text}&#${text};@${text}`, recipient: { id: text, name: text } })).toBe(
        "string",
      );
    }),
    { numRuns: 2_000 },
  );
  const many = "<at>".repeat(60_000);
  expect(stripMention({ text: many, recipient: BOT })).toBe(many);
});

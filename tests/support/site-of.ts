import type { AnyCaution } from "../../src/cautions/caution.ts";
import type { SiteFacts } from "../../src/cautions/site-facts.ts";
import type { FactValue } from "../../src/declaration/facts.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import type { Topic } from "../../src/declaration/topic.ts";
import { fixtureBooks } from "./fixture-books.ts";

/** What a topic tells the cautions of the site, with facts in base units as if somebody had told them all. */
export function siteOf(topic: Topic, facts: Readonly<Record<string, FactValue>>): SiteFacts {
  let seen: SiteFacts | undefined;
  const watcher: AnyCaution = {
    id: "watcher",
    severity: "note",
    cites: [{ basis: "invented", document: "watcher of the tests", checkedOn: "2026-11-25" }],
    decides: "household",
    data: {},
    check: (site) => {
      seen = site;
      return undefined;
    },
    examples: { fires: [{ name: "never", site: {} }], silent: [{ name: "always", site: {} }] },
  };
  const known = Object.fromEntries(Object.entries(facts).map(([id, value]) => [id, { value, from: "asked" as const }]));
  runTopic(topic, known, fixtureBooks, [watcher], () => undefined);
  if (seen === undefined) throw new Error("the topic told nothing of the site");
  return seen;
}

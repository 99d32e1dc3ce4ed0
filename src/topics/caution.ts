import { type Books, codeAt } from "../books/books.ts";
import { CODE_AREAS, type CodeArea } from "../cautions/code.ts";
import type {
  Answer,
  FindingOf,
  FindingSpecs,
  NameResult,
  OutOfRange,
  RaisedCaution,
  Severity,
} from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import type { Source } from "../declaration/source.ts";
import { declareTopic } from "../declaration/topic.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import { findByName, findModel } from "../equipment/find-model.ts";
import { describeSite } from "../household/site-told.ts";
import { SITE_TOLD, type SiteTold } from "../household/site-told-facts.ts";

const RESULTS = ["plumbing_code", "electrical_code", "mechanical_code"] as const;

const FINDINGS = {
  raises_stop: { stops: "count", all: "count" },
  raises_must: { musts: "count", all: "count" },
  raises_less: { all: "count" },
  raises_nothing: {},
  code_assumed: {},
  some_silenced: { silenced: "count" },
  tell_more: {},
  step_form: {},
  unknown_model: { typed: "word", nearest: "word" },
  unknown_place: { typed: "word", nearest: "word" },
} as const satisfies FindingSpecs;

type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

export const caution = declareTopic({
  id: "caution",
  work: "short",
  facts: SITE_TOLD,
  results: RESULTS,
  findings: FINDINGS,
  compute: (facts, books) => refuse(facts, books) ?? tellCode(facts, books),
  site: (facts, books) => describeSite(facts, modelOf(facts, books)),
  conclude: (answer, raised, silenced) => ({
    ...answer,
    ...judge(raised),
    findings: [
      ...answer.findings,
      ...(silenced.length === 0
        ? []
        : [{ code: "some_silenced" as const, data: { silenced: q("count", silenced.length) } }]),
      { code: "tell_more", data: {} },
    ],
  }),
});

function refuse({ model, place }: SiteTold, books: Books): OutOfRange<F> | undefined {
  const found = model === undefined ? undefined : findModel(books.catalogue, model);
  if (model !== undefined && found?.ok === false) return unknown("model", model, found.nearest);
  const there = place === undefined ? undefined : findByName(books.places, place);
  if (place !== undefined && there?.ok === false) return unknown("place", place, there.nearest);
  return undefined;
}

function unknown(fact: "model" | "place", typed: string, nearest: readonly string[]): OutOfRange<F> {
  const reason: F = { code: `unknown_${fact}`, data: { typed, nearest: nearest.join(", ") } };
  return { kind: "out-of-range", fact, value: typed, reason };
}

function modelOf({ model }: SiteTold, books: Books): CatalogueModel | undefined {
  const found = model === undefined ? undefined : findModel(books.catalogue, model);
  return found?.ok ? found.entry : undefined;
}

/** What is known before any caution is raised: the code that holds at the place. */
function tellCode({ place }: SiteTold, books: Books): Answer<Id, F> {
  const code = codeAt(books, place);
  return {
    kind: "answer",
    ...judge([]),
    results: CODE_AREAS.map((area) => codeResult(area, books, place)),
    findings: code.isAssumed ? [{ code: "code_assumed", data: {} }] : [],
    next: [{ say: { code: "step_form", data: {} }, request: "form caution" }],
  };
}

function codeResult(area: CodeArea, books: Books, place: string | undefined): NameResult<Id> {
  const code = codeAt(books, place);
  const { family, edition } = code.adopted[area];
  const source: Source = code.isAssumed
    ? { basis: "common_practice", document: "Oldhand" }
    : {
        basis: books.company.isInvented ? "invented" : "published",
        document: books.company.name,
        section: "code.yaml",
      };
  return {
    id: `${area}_code`,
    name: `${family} ${edition}`,
    how: { equation: `${family} ${edition}`, inputs: [], sources: [source] },
  };
}

function judge(raised: readonly RaisedCaution[]): Pick<Answer<Id, F>, "verdict" | "headline"> {
  const count = (severity: Severity) => raised.filter((one) => one.severity === severity).length;
  const all = q("count", raised.length);
  const [stops, musts] = [count("stop"), count("must")];
  if (stops > 0) return { verdict: "no", headline: { code: "raises_stop", data: { stops: q("count", stops), all } } };
  if (musts > 0)
    return { verdict: "caution", headline: { code: "raises_must", data: { musts: q("count", musts), all } } };
  if (raised.length > 0) return { verdict: "caution", headline: { code: "raises_less", data: { all } } };
  return { verdict: "info", headline: { code: "raises_nothing", data: {} } };
}

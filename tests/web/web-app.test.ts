import { parseHTML } from "linkedom";
import { expect, test } from "vitest";
import { RunningDeliveries } from "../../adapters/web/running-deliveries.ts";
import { buildWebApp, type WebAppOptions } from "../../adapters/web/web-app.ts";
import { noteCard, PEOPLE, ScriptedDesk } from "./scripted-desk.ts";

const HOST = "127.0.0.1:4100";

function openApp(desk: ScriptedDesk, options: Partial<WebAppOptions> = {}) {
  return buildWebApp({
    desk,
    people: PEOPLE,
    company: { name: "Invented & Sons", isInvented: true },
    examples: { en: ["mix 135 to 120 with 50 in"], es: ["mix 135 a 120 con 50"] },
    languageOf: async () => "en",
    log: { error: () => {} },
    running: new RunningDeliveries(60_000),
    hosts: () => [HOST],
    heartbeat_ms: 60_000,
    ...options,
  });
}
type App = ReturnType<typeof openApp>;

const MESSAGE = { delivery: "delivery-1", conversation: "conversation-1", user: "wilma", text: "mix" };
const HEADERS = { "content-type": "application/json", origin: `http://${HOST}` };

async function post(app: App, body: unknown, headers: Record<string, string> = HEADERS): Promise<Response> {
  return await app.request(`http://${HOST}/messages`, { method: "POST", headers, body: JSON.stringify(body) });
}
async function linesOf(response: Response): Promise<readonly Record<string, unknown>[]> {
  const text = await response.text();
  return text
    .trimEnd()
    .split("\n")
    .map((line): Record<string, unknown> => JSON.parse(line));
}

test("a message is answered line by line, last the card as html", async () => {
  const desk = new ScriptedDesk();
  const response = await post(openApp(desk), MESSAGE);
  expect(response.status).toBe(200);
  expect(response.headers.get("content-type")).toBe("application/x-ndjson; charset=utf-8");
  const lines = await linesOf(response);
  expect(lines.map((line) => line["kind"])).toEqual(["working", "card"]);
  expect(lines[1]).toMatchObject({ summary: "You said: mix", language: "en", isRepeat: false });
  expect(lines[1]?.["html"]).toContain(`aria-labelledby="delivery-1-title"`);
});

test("the desk is told the person, the conversation, the delivery and the words", async () => {
  const desk = new ScriptedDesk();
  const sent = { ...MESSAGE, aim: { walk: "w1", fact: "cold" }, form: { topic: "mix", fields: { hot: "135" } } };
  await linesOf(await post(openApp(desk), sent));
  expect(desk.received).toEqual([
    {
      caller: { door: "web", organisation: "local", user: "wilma", name: "Wilma Tarn" },
      conversation: "web:conversation-1",
      delivery: "web:wilma:delivery-1",
      text: "mix",
      aim: sent.aim,
      form: sent.form,
    },
  ]);
});

test("a repeat is given the same card and says that it is one", async () => {
  let answers = 0;
  const desk = new ScriptedDesk(() => noteCard(`answer ${++answers}`));
  const app = openApp(desk);
  const [, first] = await linesOf(await post(app, MESSAGE));
  const [, second] = await linesOf(await post(app, { ...MESSAGE, text: "something else" }));
  expect(second?.["html"]).toBe(first?.["html"]);
  expect([first?.["isRepeat"], second?.["isRepeat"]]).toEqual([false, true]);
});

test("the same delivery id of another person is another message", async () => {
  const desk = new ScriptedDesk();
  const app = openApp(desk);
  await linesOf(await post(app, MESSAGE));
  const [, other] = await linesOf(await post(app, { ...MESSAGE, user: "nadia", text: "other" }));
  expect(other).toMatchObject({ summary: "You said: other", isRepeat: false });
});

test("a delivery that is sent again while it is worked on is worked on once and answered to both", async () => {
  const desk = new ScriptedDesk();
  const app = openApp(desk);
  desk.hold();
  const responses = [await post(app, MESSAGE), await post(app, MESSAGE)];
  desk.release();
  const answers = await Promise.all(responses.map(linesOf));
  expect(desk.received.length).toBe(1);
  expect(answers.map((lines) => lines.at(-1)?.["kind"])).toEqual(["card", "card"]);
});

test("progress and signs of life are sent while work goes on", async () => {
  const desk = new ScriptedDesk();
  desk.hold();
  const response = await post(openApp(desk, { heartbeat_ms: 1 }), MESSAGE);
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader();
  let heard = "";
  const hear = async (what: string) => {
    while (!heard.includes(what)) heard += (await reader?.read())?.value ?? "";
  };
  await hear(`{"kind":"working"}\n`);
  await hear(`{"kind":"alive"}\n`);
  desk.showProgress(noteCard("half way"));
  await hear(`half way`);
  desk.release();
  await hear(`"kind":"card"`);
  const kinds = heard
    .trimEnd()
    .split("\n")
    .map((line): string => JSON.parse(line).kind)
    .filter((kind) => kind !== "alive");
  expect(kinds).toEqual(["working", "progress", "card"]);
});

test("each answer is in the language that the person reads after it", async () => {
  let language: "en" | "es" = "en";
  const desk = new ScriptedDesk(() => {
    language = "es";
    return noteCard("hola");
  });
  const [, card] = await linesOf(await post(openApp(desk, { languageOf: async () => language }), MESSAGE));
  expect(card?.["language"]).toBe("es");
  expect(card?.["html"]).toContain(`lang="es"`);
});

test("a desk that fails is said so with an id that the log has, and without its stack", async () => {
  const logged: object[] = [];
  const desk = new ScriptedDesk(() => {
    throw new Error("the secret cause");
  });
  const response = await post(openApp(desk, { log: { error: (data) => logged.push(data) } }), MESSAGE);
  const text = await response.text();
  const [, id] = /\(([0-9a-f]{8})\)/.exec(text) ?? [];
  expect(text).toContain(`"kind":"fault"`);
  expect(text).not.toContain("secret");
  expect(logged).toMatchObject([{ door: "web", id, error: { message: "the secret cause" } }]);
});

const REFUSED: readonly {
  readonly name: string;
  readonly body: unknown;
  readonly status: number;
  readonly says: RegExp;
}[] = [
  { name: "an unknown person", body: { ...MESSAGE, user: "nobody" }, status: 400, says: /Pick a name/ },
  { name: "an empty text", body: { ...MESSAGE, text: "  " }, status: 400, says: /Type a question/ },
  { name: "4001 characters", body: { ...MESSAGE, text: "x".repeat(4001) }, status: 400, says: /Shorten it to 4000/ },
  { name: "300,000 bytes", body: { ...MESSAGE, text: "x".repeat(300_000) }, status: 413, says: /Shorten it to 4000/ },
  { name: "a damaged body", body: { ...MESSAGE, delivery: 7 }, status: 400, says: /Reload the page/ },
];
test.each(REFUSED)("refuses $name with a sentence that says what to do", async ({ body, status, says }) => {
  const desk = new ScriptedDesk();
  const response = await post(openApp(desk), body);
  expect(response.status).toBe(status);
  const [line, ...rest] = await linesOf(response);
  expect(line?.["kind"]).toBe("refused");
  expect(line?.["text"]).toMatch(says);
  expect(rest).toEqual([]);
  expect(desk.received).toEqual([]);
});

test("refuses in the language of the person", async () => {
  const response = await post(openApp(new ScriptedDesk(), { languageOf: async () => "es" }), { ...MESSAGE, text: "" });
  expect((await linesOf(response))[0]?.["text"]).toContain("Escriba una pregunta");
});

const NOT_JSON: readonly { readonly name: string; readonly type: string; readonly body: string }[] = [
  { name: "a form of another site", type: "application/x-www-form-urlencoded", body: "text=mix" },
  { name: "json called plain text", type: "text/plain", body: JSON.stringify(MESSAGE) },
  { name: "json that is cut off", type: "application/json", body: `{"delivery":` },
];
test.each(NOT_JSON)("refuses $name", async ({ type, body }) => {
  const desk = new ScriptedDesk();
  const headers = { ...HEADERS, "content-type": type };
  const response = await openApp(desk).request(`http://${HOST}/messages`, { method: "POST", headers, body });
  expect(response.status).toBe(400);
  expect(desk.received).toEqual([]);
});

const FORBIDDEN: readonly { readonly name: string; readonly headers: Record<string, string> }[] = [
  { name: "no origin", headers: { "content-type": "application/json" } },
  { name: "the origin of another site", headers: { ...HEADERS, origin: "https://example.test" } },
  { name: "the origin of another port", headers: { ...HEADERS, origin: "http://127.0.0.1:4101" } },
  { name: "our host over https", headers: { ...HEADERS, origin: `https://${HOST}` } },
  { name: "an opaque origin", headers: { ...HEADERS, origin: "null" } },
  { name: "a host that begins like ours", headers: { ...HEADERS, origin: `http://${HOST}.example.test` } },
  { name: "the host of another site", headers: { ...HEADERS, host: "example.test:4100" } },
];
test.each(FORBIDDEN)("takes no message with $name", async ({ headers }) => {
  const desk = new ScriptedDesk();
  const response = await post(openApp(desk), MESSAGE, headers);
  expect(response.status).toBe(403);
  expect(await response.text()).toContain(`http://${HOST}/`);
  expect(desk.received).toEqual([]);
});

test.each(["/", "/static/app.js"])("gives %s to nobody who calls this server by another name", async (path) => {
  const app = openApp(new ScriptedDesk());
  expect((await app.request(`http://${HOST}${path}`)).status).toBe(200);
  expect((await app.request(`http://rebound.example.test:4100${path}`)).status).toBe(403);
  expect((await app.request(`http://${HOST}${path}`, { headers: { host: "rebound.example.test" } })).status).toBe(403);
});

const PATHS = ["/", "/static/app.js", "/static/palette.css", "/nothing"];
test.each(PATHS)("%s carries the headers that keep a page to itself", async (path) => {
  const { headers } = await openApp(new ScriptedDesk()).request(`http://${HOST}${path}`);
  const policy = headers.get("content-security-policy")?.split("; ").sort();
  expect(policy).toEqual(
    [
      "default-src 'none'",
      "script-src 'self'",
      "style-src 'self'",
      "img-src 'self' blob:",
      "connect-src 'self'",
      "form-action 'none'",
      "base-uri 'none'",
      "frame-ancestors 'none'",
    ].sort(),
  );
  expect(headers.get("x-content-type-options")).toBe("nosniff");
  expect(headers.get("x-frame-options")).toBe("DENY");
  expect(headers.get("referrer-policy")).toBe("no-referrer");
  expect(headers.get("cross-origin-resource-policy")).toBe("same-origin");
  expect(headers.has("set-cookie")).toBe(false);
  expect(headers.has("access-control-allow-origin")).toBe(false);
});

const FILES = [
  { path: "/static/app.js", type: "text/javascript; charset=utf-8" },
  { path: "/static/palette.css", type: "text/css; charset=utf-8" },
  { path: "/static/icon.svg", type: "image/svg+xml; charset=utf-8" },
];
test.each(FILES)("$path is served as $type", async ({ path, type }) => {
  const response = await openApp(new ScriptedDesk()).request(`http://${HOST}${path}`);
  expect(response.status).toBe(200);
  expect(response.headers.get("content-type")).toBe(type);
});

test("the page has no inline script or style, and names only its own files", async () => {
  const page = await (await openApp(new ScriptedDesk()).request(`http://${HOST}/`)).text();
  const { document } = parseHTML(page);
  expect([...document.querySelectorAll("script")].map((one) => [one.getAttribute("src"), one.textContent])).toEqual([
    ["/static/app.js", ""],
  ]);
  expect(document.querySelectorAll("style, [style], iframe, base").length).toBe(0);
  const addresses = [...document.querySelectorAll("[src], [href]")].map(
    (one) => one.getAttribute("src") ?? one.getAttribute("href"),
  );
  expect(addresses.length).toBeGreaterThan(4);
  for (const address of addresses) expect(address).toMatch(/^(\/static\/[a-z]+\.(js|css|svg)|#message)$/);
});

test("the page shows the company, its people with their roles, and the questions to try", async () => {
  const page = await (await openApp(new ScriptedDesk()).request(`http://${HOST}/`)).text();
  const { document } = parseHTML(page);
  expect(document.documentElement.lang).toBe("en");
  expect(document.querySelector(".company")?.textContent).toBe("Invented & Sons");
  expect(document.querySelector(".invented")?.textContent).toContain("invented");
  expect([...document.querySelectorAll("#person option")].map((one) => one.textContent)).toEqual([
    "Wilma Tarn, technician",
    "Oskar Lind, dispatcher",
    "Nadia Brook, manager",
  ]);
  expect([...document.querySelectorAll(".opening button")].map((one) => one.getAttribute("data-say"))).toEqual([
    "mix 135 to 120 with 50 in",
    "mix 135 a 120 con 50",
  ]);
});

test("the day's work is one press away, in each language, where something answers it", async () => {
  const read = async (options: Partial<WebAppOptions>) => {
    const page = await openApp(new ScriptedDesk(), options).request(`http://${HOST}/`);
    const buttons = parseHTML(await page.text()).document.querySelectorAll(".today button");
    return [...buttons].map((one) => [one.getAttribute("data-say"), one.textContent]);
  };
  expect(await read({ today: { en: "today", es: "hoy" } })).toEqual([
    ["today", "Today"],
    ["hoy", "Hoy"],
  ]);
  expect(await read({})).toEqual([]);
});

test("the page of a Spanish reader is in Spanish", async () => {
  const app = openApp(new ScriptedDesk(), { languageOf: async () => "es" });
  const { document } = parseHTML(await (await app.request(`http://${HOST}/`)).text());
  expect(document.documentElement.lang).toBe("es");
  expect(document.querySelector("[data-word=send]")?.textContent).toBe("Enviar");
});

test("a company that is real says nothing of inventions", async () => {
  const app = openApp(new ScriptedDesk(), { company: { name: "Ours", isInvented: false } });
  const { document } = parseHTML(await (await app.request(`http://${HOST}/`)).text());
  expect(document.querySelector(".invented")).toBe(null);
});

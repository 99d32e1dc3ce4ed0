import { createHmac, generateKeyPairSync, type KeyObject } from "node:crypto";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { ServiceClientCredentialsFactory } from "botframework-connector";
import jwt from "jsonwebtoken";

export const APP_ID = "11111111-2222-4333-8444-555555555555";
export const TENANT_ID = "99999999-8888-4777-8666-555555555555";
export const ISSUER = "https://api.botframework.com";
export const OUTBOUND_TOKEN = "outbound-token-of-the-tests";

const { privateKey, publicKey } = generateKeyPairSync("rsa", { modulusLength: 2048 });
const { privateKey: strangersKey } = generateKeyPairSync("rsa", { modulusLength: 2048 });
export const PUBLIC_PEM = publicKey.export({ type: "spki", format: "pem" }).toString();

/** Credentials that need no sign-in service: every outgoing request carries one known token. */
export class FakeCredentials extends ServiceClientCredentialsFactory {
  override async isValidAppId(appId: string) {
    return appId === APP_ID;
  }
  override async isAuthenticationDisabled() {
    return false;
  }
  override async createCredentials() {
    return {
      signRequest: async <T extends { headers: { set(name: string, value: string): void } }>(request: T) => {
        request.headers.set("authorization", `Bearer ${OUTBOUND_TOKEN}`);
        return request;
      },
      getToken: async () => OUTBOUND_TOKEN,
    };
  }
}

export interface SentCall {
  readonly method: string;
  readonly path: string;
  readonly bytes: number;
  readonly headers: IncomingMessage["headers"];
  // biome-ignore lint/suspicious/noExplicitAny: the body is whatever JSON the library sent
  readonly body: any;
  readonly id: string;
}
export interface Refusal {
  /** 0 breaks the connection off. */
  readonly status: number;
  readonly headers?: Readonly<Record<string, string>>;
  /** The platform's own word for it. */
  readonly code?: string;
}

/** The platform's side on the loopback address: signing keys, and the connector that takes what the bot sends. */
export class FakePlatform {
  readonly sent: SentCall[] = [];
  /** Answers to give instead of success, first one first; typing signs are always taken. */
  refusals: Refusal[] = [];
  keyRequests = 0;
  readonly #server: Server;
  #waiting: (() => void)[] = [];

  private constructor(server: Server) {
    this.#server = server;
  }

  static async start(endorsements: readonly string[] = ["msteams"]): Promise<FakePlatform> {
    const server = createServer((request, response) => {
      void platform.#answer(request, response, endorsements);
    });
    const platform = new FakePlatform(server);
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    return platform;
  }

  get url(): string {
    const address: AddressInfo | string | null = this.#server.address();
    if (address === null || typeof address === "string") throw new Error("not listening");
    return `http://127.0.0.1:${address.port}`;
  }

  get openIdMetadataUrl(): string {
    return `${this.url}/.well-known/openidconfiguration`;
  }

  /** Everything sent but typing signs. */
  get messages(): readonly SentCall[] {
    return this.sent.filter(({ body }) => body?.type !== "typing");
  }

  /** Comes back as soon as this is true of what was sent. */
  async until(isTrue: (sent: readonly SentCall[]) => boolean): Promise<void> {
    while (!isTrue(this.sent)) await new Promise<void>((resolve) => this.#waiting.push(resolve));
  }

  async stop(): Promise<void> {
    this.#server.closeAllConnections();
    await new Promise((resolve) => this.#server.close(resolve));
  }

  async #answer(request: IncomingMessage, response: ServerResponse, endorsements: readonly string[]) {
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk);
    const body = Buffer.concat(chunks);
    response.setHeader("content-type", "application/json");
    if (request.url === "/.well-known/openidconfiguration") {
      response.end(JSON.stringify({ issuer: ISSUER, jwks_uri: `${this.url}/keys` }));
      return;
    }
    if (request.url === "/keys") {
      this.keyRequests++;
      const jwk = { ...publicKey.export({ format: "jwk" }), use: "sig", kid: "k1", endorsements };
      response.end(JSON.stringify({ keys: [jwk] }));
      return;
    }
    const id = `sent-${this.sent.length + 1}`;
    const parsed = body.length > 0 ? JSON.parse(body.toString()) : undefined;
    const [method, path, headers] = [request.method ?? "", request.url ?? "", request.headers];
    this.sent.push({ method, path, headers, bytes: body.length, body: parsed, id });
    const refusal = parsed?.type === "typing" ? undefined : this.refusals.shift();
    if (refusal?.status === 0) request.socket.destroy();
    else if (refusal) response.writeHead(refusal.status, refusal.headers ?? {});
    else response.writeHead(method === "POST" ? 201 : 200);
    const refused = { error: { code: refusal?.code ?? "Busy", message: "busy" } };
    response.end(JSON.stringify(refusal ? refused : takenAs(id, path, parsed)));
    const waiting = this.#waiting;
    this.#waiting = [];
    for (const resolve of waiting) resolve();
  }
}

/** A new thread is told with the id of its first message. @source botframework-connector 4.23.3, ConversationResourceResponse */
function takenAs(
  id: string,
  path: string,
  body: { readonly channelData?: { readonly channel?: { readonly id: string } } },
) {
  if (path !== "/v3/conversations") return { id };
  return { id: `${body.channelData?.channel?.id};messageid=${id}`, activityId: id, serviceUrl: "" };
}

interface TokenOptions {
  readonly claims?: object;
  readonly key?: KeyObject;
  readonly keyid?: string;
  readonly expires_s?: number;
}

/** A token as the platform signs them. */
export function signToken(platform: Pick<FakePlatform, "url">, options: TokenOptions = {}): string {
  const { claims = {}, key = privateKey, keyid = "k1", expires_s = 3_600 } = options;
  const now_s = Math.floor(Date.now() / 1_000);
  const payload = { iss: ISSUER, aud: APP_ID, serviceurl: platform.url, exp: now_s + expires_s, ...claims };
  return jwt.sign(payload, key, { algorithm: "RS256", keyid });
}

/** Tokens that a stranger could make, each with what is wrong with it. */
export function badTokens(
  platform: Pick<FakePlatform, "url">,
): readonly { readonly name: string; readonly token: string }[] {
  const encode = (value: object) => Buffer.from(JSON.stringify(value)).toString("base64url");
  const claims = encode({ iss: ISSUER, aud: APP_ID, serviceurl: platform.url, exp: 9_999_999_999 });
  const confused = `${encode({ alg: "HS256", kid: "k1", typ: "JWT" })}.${claims}`;
  const unsigned = `${encode({ alg: "none", kid: "k1" })}.${claims}.`;
  const emulator = { iss: "https://sts.windows.net/d6d49420-f39b-4df7-a1dc-d59a935871db/", appid: APP_ID, ver: "1.0" };
  const skill = { aud: APP_ID, appid: "22222222-2222-4333-8444-555555555555", ver: "1.0" };
  return [
    { name: "signed by a stranger under a known key id", token: signToken(platform, { key: strangersKey }) },
    {
      name: "signed with HS256 and the public key",
      token: `${confused}.${createHmac("sha256", PUBLIC_PEM).update(confused).digest("base64url")}`,
    },
    { name: "with alg none", token: unsigned },
    { name: "with an unknown key id", token: signToken(platform, { keyid: "k2" }) },
    { name: "of another issuer", token: signToken(platform, { claims: { iss: "https://issuer.invalid" } }) },
    {
      name: "for another app",
      token: signToken(platform, { claims: { aud: "33333333-2222-4333-8444-555555555555" } }),
    },
    { name: "expired ten minutes ago", token: signToken(platform, { expires_s: -600 }) },
    {
      name: "not valid for another hour",
      token: signToken(platform, { claims: { nbf: Math.floor(Date.now() / 1_000) + 3_600 } }),
    },
    {
      name: "for another service address",
      token: signToken(platform, { claims: { serviceurl: "https://service.invalid" } }),
    },
    { name: "of the emulator", token: signToken(platform, { claims: emulator }) },
    { name: "of another bot", token: signToken(platform, { claims: skill }) },
    { name: "that is no token", token: "a.b.c" },
    { name: "of one word", token: "token" },
    { name: "with a damaged payload", token: `${encode({ alg: "RS256", kid: "k1" })}.e30x.${"A".repeat(342)}` },
  ];
}

/** A message activity as Teams sends it from a personal chat. */
export function messageActivity(platform: Pick<FakePlatform, "url">, changes: object = {}): Record<string, unknown> {
  return {
    type: "message",
    id: "1700000000001",
    timestamp: "2026-01-15T15:00:00.000Z",
    channelId: "msteams",
    serviceUrl: platform.url,
    locale: "en-US",
    from: { id: "29:ana", name: "Ana", aadObjectId: "ana-object" },
    conversation: { id: "19:chat", conversationType: "personal", tenantId: TENANT_ID },
    recipient: { id: "28:oldhand", name: "Oldhand" },
    text: "expansion 80 gal",
    channelData: { tenant: { id: TENANT_ID } },
    ...changes,
  };
}

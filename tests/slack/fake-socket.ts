import { createHash } from "node:crypto";
import { createServer } from "node:http";
import type { AddressInfo, Socket } from "node:net";
import type { Json } from "./slack-harness.ts";

/** Slack's side of Socket Mode on the loopback address, by RFC 6455, as far as unfragmented frames go. */
export interface FakeSocket {
  readonly url: string;
  /** How often somebody connected so far. */
  connections(): number;
  /** Resolves at the connection with this number, from 1. */
  connected(nth: number): Promise<void>;
  /** Sends to the newest connection. */
  send(message: Json): void;
  /** What the client sent back about this envelope, as soon as it comes. */
  ack(envelope: string): Promise<Json>;
  acks(envelope: string): number;
  /** From now on: no hello, no farewell, or the usual. */
  manners: { greets: boolean; saysFarewell: boolean };
  /** Cuts the newest connection without a word. */
  cut(): void;
  close(): Promise<void>;
}

const GUID = "258EAFA5-E914-47DA-95CA-C5AB0DC85B11";
const TEXT = 1;
const CLOSE = 8;
const PING = 9;
const PONG = 10;

export async function openFakeSocket(): Promise<FakeSocket> {
  const sockets: Socket[] = [];
  const acks: Json[] = [];
  const manners = { greets: true, saysFarewell: true };
  let waiters: (() => void)[] = [];
  const wake = () => {
    for (const waiter of waiters) waiter();
    waiters = [];
  };
  const until = async <T>(look: () => T | undefined): Promise<T> => {
    for (;;) {
      const found = look();
      if (found !== undefined) return found;
      await new Promise<void>((resolve) => waiters.push(resolve));
    }
  };
  const server = createServer();
  server.on("upgrade", (request, socket: Socket) => {
    const accept = createHash("sha1").update(`${request.headers["sec-websocket-key"]}${GUID}`).digest("base64");
    socket.on("error", () => {});
    socket.write(
      `HTTP/1.1 101 Switching Protocols\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Accept: ${accept}\r\n\r\n`,
    );
    readFrames(socket, (kind, payload) => {
      if (kind === PING) socket.write(frame(PONG, payload));
      if (kind === CLOSE && manners.saysFarewell) socket.end(frame(CLOSE, payload));
      if (kind === TEXT) acks.push(JSON.parse(payload.toString("utf8")) as Json);
      wake();
    });
    sockets.push(socket);
    if (manners.greets) socket.write(text({ type: "hello", num_connections: 1 }));
    wake();
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `ws://127.0.0.1:${port}/link`,
    manners,
    connections: () => sockets.length,
    connected: async (nth) => {
      await until(() => sockets[nth - 1]);
    },
    send: (message) => {
      sockets.at(-1)?.write(text(message));
    },
    ack: (envelope) => until(() => acks.find((ack) => ack["envelope_id"] === envelope)),
    acks: (envelope) => acks.filter((ack) => ack["envelope_id"] === envelope).length,
    cut: () => {
      sockets.at(-1)?.destroy();
    },
    async close() {
      for (const socket of sockets) socket.destroy();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

function text(message: Json): Buffer {
  return frame(TEXT, Buffer.from(JSON.stringify(message), "utf8"));
}

/** One whole frame; a server sends without a mask (RFC 6455, section 5.2). */
function frame(kind: number, payload: Buffer): Buffer {
  const isLong = payload.length > 125;
  const head = Buffer.alloc(isLong ? 4 : 2);
  head[0] = 0x80 | kind;
  head[1] = isLong ? 126 : payload.length;
  if (isLong) head.writeUInt16BE(payload.length, 2);
  return Buffer.concat([head, payload]);
}

/** Reads masked frames of up to 65,535 bytes. */
function readFrames(socket: Socket, onFrame: (kind: number, payload: Buffer) => void): void {
  let kept: Buffer = Buffer.alloc(0);
  socket.on("data", (part: Buffer) => {
    kept = Buffer.concat([kept, part]);
    for (;;) {
      const short = (kept[1] ?? 0) & 0x7f;
      const at = short === 126 ? 4 : 2;
      if (kept.length < at + 4) return;
      const length = short === 126 ? kept.readUInt16BE(2) : short;
      if (kept.length < at + 4 + length) return;
      const mask = kept.subarray(at, at + 4);
      const payload = Buffer.from(kept.subarray(at + 4, at + 4 + length).map((byte, i) => byte ^ (mask[i % 4] ?? 0)));
      onFrame((kept[0] ?? 0) & 0x0f, payload);
      kept = kept.subarray(at + 4 + length);
    }
  });
}

import type { IncomingMessage, ServerResponse } from "node:http";
import EleventyDevServer from "@11ty/eleventy-dev-server";

/** What is sent for one address. */
export interface Answer {
  readonly status: number;
  /** Media type, with its charset where it is text. */
  readonly type: string;
  readonly body: Uint8Array | string;
}

export interface LiveServer {
  /** Address of the first page, with the port that was free. */
  readonly url: string;
  /** Lets every open page load itself anew. */
  renew(): void;
  close(): Promise<void>;
}

const host = "127.0.0.1";
/** Ports tried above the first. */
const more = 100;

/**
 * The policy of live pages. Renewal needs a script of the server's and a connection back to it, so it stands in a header of
 * this server alone; pages of an issue carry a stricter one in themselves.
 */
const policy = (own: string): string =>
  [
    "default-src 'none'",
    "script-src 'self'",
    `connect-src 'self' ws://${own}`,
    "style-src 'self'",
    "font-src 'self'",
    "img-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join("; ");

/**
 * Eleventy's own server would listen to every network the machine is in, and answer under any name that leads here, so a
 * page elsewhere could read a book through a name of its own.
 */
class OwnMachineOnly extends EleventyDevServer {
  protected override _serverListen(port: number): void {
    this.server.listen({ port, host });
  }

  protected override async onRequestHandler(request: IncomingMessage, response: ServerResponse): Promise<void> {
    if (isOwn(this.server, request)) return super.onRequestHandler(request, response);
    response.writeHead(403, { "Content-Type": "text/plain; charset=utf-8" });
    response.end("this server answers programs on its own machine only\n");
  }
}

/**
 * Serves what `answer` gives for a path, `/` included, to this machine alone, from the port asked for or the next free one.
 * `answer` may throw: the page says so.
 */
export async function serveLive(answer: (path: string) => Promise<Answer>, port: number): Promise<LiveServer> {
  const silent = () => undefined;
  let version = 0;
  let sent = 0;
  const server = new OwnMachineOnly("databook", ".", {
    portReassignmentRetryCount: more,
    domDiff: false,
    messageOnStart: () => false,
    logger: { info: silent, log: silent, error: silent },
    // Answers everything: the server's own way to files is never reached.
    middleware: [
      (request, response) => {
        sent = version;
        void send(answer, request, response);
      },
    ],
  });
  server.serve(port);
  // Before the server's own: a socket closed here is dead when that one sees it.
  server.server.prependListener("upgrade", (request, socket) => {
    if (!isOwn(server.server, request)) socket.destroy();
  });
  await server.ready();
  // A change between the sending of a page and its first call back would else pass it by.
  server.updateServer.on("connection", () => {
    if (sent !== version) server.reload({ files: [] });
  });
  return {
    url: `http://${ownHost(server.server)}/`,
    renew: () => {
      version++;
      server.reload({ files: [] });
    },
    close: async () => {
      await server.close();
    },
  };
}

async function send(
  answer: (path: string) => Promise<Answer>,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const { status, type, body } = await answerTo(answer, request);
  response.statusCode = status;
  response.setHeader("Content-Type", type);
  response.setHeader("Cache-Control", "no-store");
  response.setHeader("X-Content-Type-Options", "nosniff");
  response.setHeader("Referrer-Policy", "no-referrer");
  if (type.startsWith("text/html")) response.setHeader("Content-Security-Policy", policy(request.headers.host ?? ""));
  response.end(body);
}

async function answerTo(answer: (path: string) => Promise<Answer>, request: IncomingMessage): Promise<Answer> {
  const text = (status: number, body: string): Answer => ({ status, type: "text/plain; charset=utf-8", body });
  if (request.method !== "GET" && request.method !== "HEAD") return text(405, "pages are read here, nothing is sent\n");
  let path: string;
  try {
    path = decodeURIComponent(new URL(request.url ?? "/", `http://${host}`).pathname);
  } catch {
    return text(400, "this address cannot be read\n");
  }
  try {
    return await answer(path);
  } catch (error) {
    const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return text(500, `this page cannot be made; this is a fault of the program, not of the book:\n${what}\n`);
  }
}

function ownHost(server: EleventyDevServer["server"]): string {
  const address = server.address();
  return address !== null && typeof address === "object" ? `${host}:${address.port}` : host;
}

/** Whether a request names this machine, and comes from no page of another place. */
function isOwn(server: EleventyDevServer["server"], { headers }: IncomingMessage): boolean {
  const own = ownHost(server);
  const names = [own, own.replace(host, "localhost")];
  const { host: asked = "", origin } = headers;
  return names.includes(asked) && (origin === undefined || names.map((name) => `http://${name}`).includes(origin));
}

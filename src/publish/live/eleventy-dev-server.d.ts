/** The few members of Eleventy's development server this project uses; the package itself ships no types. */
declare module "@11ty/eleventy-dev-server" {
  import type { IncomingMessage, Server, ServerResponse } from "node:http";

  interface Options {
    /** So many ports above the first are tried when it is taken. */
    readonly portReassignmentRetryCount: number;
    readonly domDiff: boolean;
    readonly messageOnStart: () => false;
    readonly logger: Readonly<Record<"info" | "log" | "error", (message: string) => void>>;
    readonly middleware: readonly ((request: IncomingMessage, response: ServerResponse) => void)[];
  }

  export default class EleventyDevServer {
    constructor(name: string, dir: string, options: Options);
    readonly server: Server;
    /** The sockets of open pages, once the server listens. */
    readonly updateServer: { on(event: "connection", hear: () => void): void };
    serve(port: number): void;
    ready(): Promise<void>;
    reload(event: { readonly files: readonly string[] }): void;
    close(): Promise<unknown>;
    protected _serverListen(port: number): void;
    protected onRequestHandler(request: IncomingMessage, response: ServerResponse): Promise<void>;
  }
}

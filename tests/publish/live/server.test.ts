import { request } from "node:http";
import { networkInterfaces } from "node:os";
import { afterAll, beforeAll, expect, test } from "vitest";
import { WebSocket } from "ws";
import { serveLive, type LiveServer } from "../../../src/publish/live/server.ts";

const asked: string[] = [];
let server: LiveServer;
let port = 0;

beforeAll(async () => {
  server = await serveLive((path) => {
    asked.push(path);
    if (path === "/fails") return Promise.reject(new Error("no such luck"));
    return Promise.resolve({ status: 200, type: "text/html; charset=utf-8", body: `<title>${path}</title>` });
  }, 18_470);
  port = Number(new URL(server.url).port);
});
afterAll(() => server.close());

interface Got {
  readonly status: number;
  readonly headers: Readonly<Record<string, unknown>>;
  readonly text: string;
}

const get = (path: string, headers: Record<string, string> = {}, method = "GET", host = "127.0.0.1") =>
  new Promise<Got>((resolve, reject) => {
    const sent = request({ host, port, path, method, headers }, (response) => {
      let text = "";
      response.setEncoding("utf8").on("data", (part: string) => (text += part));
      response.on("end", () => resolve({ status: response.statusCode ?? 0, headers: response.headers, text }));
    });
    sent.on("error", reject).end();
  });

test("a page is sent with the script that renews it, under a policy that lets nothing else in", async () => {
  const { status, headers, text } = await get("/joint/r-L1.html");
  expect(status).toBe(200);
  expect(text).toContain("<title>/joint/r-L1.html</title>");
  expect(text).toContain("/.11ty/reload-client.js");
  expect(headers["content-security-policy"]).toContain(`connect-src 'self' ws://127.0.0.1:${port}`);
  expect(headers["content-security-policy"]).not.toContain("unsafe");
});

test("no other name of this machine is answered, nor a page of another place", async () => {
  asked.length = 0;
  for (const headers of [
    { host: "books.example" },
    { host: `127.0.0.1.books.example:${port}` },
    { host: `127.0.0.1:${port}`, origin: "http://books.example" },
    { host: `127.0.0.1:${port}`, origin: "null" },
  ])
    expect((await get("/", headers)).status).toBe(403);
  expect(asked).toEqual([]);
  expect((await get("/", { host: `localhost:${port}` })).status).toBe(200);
});

test("no network reaches it", async () => {
  const others = Object.values(networkInterfaces())
    .flatMap((found) => found ?? [])
    .filter(({ internal, family }) => !internal && family === "IPv4");
  for (const { address } of others) await expect(get("/", {}, "GET", address)).rejects.toThrow("ECONNREFUSED");
});

const socketTo = (origin: string) =>
  new Promise<string>((resolve) => {
    const socket = new WebSocket(`ws://127.0.0.1:${port}`, { origin });
    socket.on("error", () => resolve("refused"));
    socket.on("message", (text: Buffer) => {
      resolve(text.toString("utf8"));
      socket.close();
    });
  });

test("only its own pages hear that something changed", async () => {
  expect(await socketTo("http://books.example")).toBe("refused");
  expect(await socketTo(`http://127.0.0.1:${port}`)).toContain("connected");
});

test("nothing is sent to it, and an address that leads nowhere or fails is said", async () => {
  expect((await get("/", {}, "POST")).status).toBe(405);
  expect((await get("/%ff")).status).toBe(400);
  const failed = await get("/fails");
  expect([failed.status, failed.text.split("\n")[0]]).toEqual([
    500,
    "this page cannot be made; this is a fault of the program, not of the book:",
  ]);
});

test("paths that climb reach whoever answers as plain paths, and no file", async () => {
  asked.length = 0;
  await get("/../../etc/passwd");
  await get("/%2e%2e/%2e%2e/etc/passwd");
  expect(asked.every((path) => !path.includes(".."))).toBe(true);
});

test("the next port is taken when the first is not free", async () => {
  const second = await serveLive(() => Promise.resolve({ status: 200, type: "text/plain", body: "" }), port);
  expect(Number(new URL(second.url).port)).toBeGreaterThan(port);
  await second.close();
});

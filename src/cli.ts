#!/usr/bin/env node
import { homedir } from "node:os";
import { isAbsolute, join, resolve } from "node:path";
import picocolors from "picocolors";
import { runCommandLine } from "./commands/run.ts";
import { startThreads } from "./foreign/waiting.ts";

/** The only file that touches arguments, clock, environment, streams, exit code and colour. */
const { env, stdout, stderr } = process;

function inkFor(stream: NodeJS.WriteStream): ReturnType<typeof picocolors.createColors> {
  const wanted = env["FORCE_COLOR"] !== undefined && env["FORCE_COLOR"] !== "0";
  const able = stream.isTTY && env["TERM"] !== "dumb";
  return picocolors.createColors(!env["NO_COLOR"] && (wanted || able));
}

/** Where what can be made again is kept from run to run, outside every book; nowhere when the environment names no home. */
function cacheFolder(): string | undefined {
  const own = env["DATABOOK_CACHE"];
  if (own !== undefined) return own === "" ? undefined : resolve(own);
  const base = process.platform === "win32" ? env["LOCALAPPDATA"] : env["XDG_CACHE_HOME"];
  if (base !== undefined && isAbsolute(base)) return join(base, "databook");
  const home = homedir();
  return isAbsolute(home)
    ? join(home, process.platform === "darwin" ? "Library/Caches" : ".cache", "databook")
    : undefined;
}

// A reader that closes early, such as `head`, is no fault.
stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit(process.exitCode ?? 0);
});

const cleared = stderr.isTTY ? "\r\u001b[K" : "";

process.exitCode = await runCommandLine(process.argv.slice(2), {
  cwd: process.cwd(),
  today: () => {
    const now = new Date();
    const two = (number: number) => String(number).padStart(2, "0");
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  },
  print: (text) => {
    stderr.write(cleared);
    stdout.write(text);
  },
  say: (text) => void stderr.write(cleared + text),
  progress: (stage) => {
    if (stderr.isTTY) stderr.write(`${cleared}${stage} …`);
  },
  // Only a command that waits takes over what stops a program; all others end at once.
  interrupted: (failed) =>
    Promise.race([
      failed,
      new Promise<void>((resolve) => {
        for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve());
      }),
    ]),
  ink: inkFor(stdout),
  sayInk: inkFor(stderr),
  prepare: startThreads,
  tool: async () => (await import("./root.ts")).toolName,
  loadEngine: async () => (await import("./commands/engine.ts")).engineKeepingIn(cacheFolder()),
});
if (cleared !== "") stderr.write(cleared);

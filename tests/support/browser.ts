import { existsSync } from "node:fs";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Browser } from "playwright-core";

export interface OpenBrowser {
  readonly browser: Browser;
  readonly close: () => Promise<void>;
}

/**
 * A headless Chromium: the one `DATABOOK_BROWSER` names, else the one of the package registry, which needs no package of
 * the system but runs on Linux x64 only. Where none can be started: the reason, for the names of the skipped tests.
 */
export async function openBrowser(): Promise<OpenBrowser | string> {
  const path = process.env["DATABOOK_BROWSER"];
  if (path !== undefined && path !== "") {
    if (!existsSync(path)) return `DATABOOK_BROWSER is ${path}, which is not there`;
    const browser = await chromium.launch({ executablePath: path, args: ["--no-sandbox"] });
    return { browser, close: () => browser.close() };
  }
  if (process.platform !== "linux" || process.arch !== "x64") return "no browser here; name one in DATABOOK_BROWSER";
  return await unpacked();
}

/** It unpacks itself into the temporary folder; an earlier copy there would keep it from bringing its own libraries. */
async function unpacked(): Promise<OpenBrowser | string> {
  const folder = await mkdtemp(join(tmpdir(), "databook-browser-"));
  const remove = () => rm(folder, { recursive: true, force: true });
  const before = process.env["TMPDIR"];
  process.env["TMPDIR"] = folder;
  // Read when the package is imported: without it a bare machine gets no libraries.
  process.env["AWS_EXECUTION_ENV"] ??= "AWS_Lambda_nodejs20.x";
  try {
    const { default: packaged } = await import("@sparticuz/chromium");
    const executablePath = await packaged.executablePath();
    // Its list of font folders has /tmp in it, whatever the temporary folder is; without any font it crashes.
    const list = join(folder, "fonts", "fonts.conf");
    await writeFile(list, (await readFile(list, "utf8")).replaceAll("/tmp/", `${folder}/`));
    // Its own arguments switch web security off, and with it what these tests are about.
    const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
    return {
      browser,
      close: async () => {
        await browser.close();
        await remove();
      },
    };
  } catch (error) {
    await remove();
    return `the packaged browser did not start (${String(error).split("\n")[0] ?? ""}); name one in DATABOOK_BROWSER`;
  } finally {
    if (before === undefined) delete process.env["TMPDIR"];
    else process.env["TMPDIR"] = before;
  }
}

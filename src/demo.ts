import { spawnSync } from "node:child_process";
import { join, relative } from "node:path";
import { packageRoot } from "./root.ts";

/** `npm run demo`: builds the demonstration books with the command a reader would use, and says where to open them. */
const cli = join(packageRoot, "dist/src/bundled/cli.js");
let failed = 0;
for (const book of ["boiler", "air-receiver", "control-air"]) {
  const out = join(packageRoot, "out", "demo", book);
  const done = spawnSync(process.execPath, [cli, "build", join(packageRoot, "demo-data", book, "book"), "--out", out], {
    stdio: "inherit",
  });
  if (done.status !== 0) failed = done.status ?? 2;
  else
    process.stdout.write(
      `\nOpen ${relative(process.cwd(), join(out, "index.html"))} by double click; the same book as PDF: ${relative(process.cwd(), join(out, "book.pdf"))}\n`,
    );
}
process.exitCode = failed;

import { build } from "./build.ts";
import { check } from "./check.ts";
import type { Command } from "./command.ts";
import { compared } from "./compared.ts";
import { explain } from "./explain.ts";
import { importSheet } from "./import.ts";
import { begin } from "./new.ts";
import { originals } from "./originals.ts";
import { owed } from "./owed.ts";
import { sheet } from "./sheet.ts";
import { trace } from "./trace.ts";
import { verify } from "./verify.ts";
import { watch } from "./watch.ts";

/** Every command, in the order of a day's work. */
export const commands: readonly Command[] = [
  begin,
  sheet,
  importSheet,
  check,
  watch,
  owed,
  build,
  trace,
  explain,
  originals,
  compared,
  verify,
];

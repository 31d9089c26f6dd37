import { resolve } from "node:path";
import { verifyIssue, type Verification } from "../publish/issue/index.ts";
import { plain } from "../report/plain.ts";
import { counted } from "../report/words.ts";
import { formatOption, type Command } from "./command.ts";

export const verify: Command = {
  name: "verify",
  summary: "compare a published issue with its hash list and its fingerprint",
  arguments: [{ name: "issue", required: true, means: "folder of the issue, wherever it lies now" }],
  options: { format: formatOption(["text", "json"]) },
  help: [
    "Hashes every file again, lists what was changed, is missing or was added, and recomputes the evidence fingerprint, to be " +
      "compared with the one printed on every page. `sha256sum -c hashes.sha256` inside the folder checks the same hashes.",
    "Exit 0: nothing moved. Exit 1: something did. Exit 2: the folder is not an issue.",
  ],
  async run(given, effects) {
    const shown = given.arguments[0] ?? "";
    effects.progress("hashing");
    const result = await verifyIssue(resolve(effects.cwd, shown));
    if (given.options.get("format") === "json") {
      const { marker, listed, changed, missing, extra, faults, fingerprint, sound } = result;
      const said = {
        tool: effects.engine.tool,
        format: 1,
        issue: marker,
        listed,
        changed,
        missing,
        extra,
        faults,
        fingerprint,
        sound,
      };
      effects.print(`${JSON.stringify(said, null, 2)}\n`);
    } else effects.print(verificationText(result));
    return result.sound ? 0 : 1;
  },
};

function verificationText({
  marker,
  listed,
  changed,
  missing,
  extra,
  faults,
  fingerprint,
  sound,
}: Verification): string {
  const what = marker?.holds === "findings" ? "findings report of " : "";
  const grouped = (hash: string) => hash.replaceAll(/(.{4})(?=.)/g, "$1 ");
  return [
    ...(marker === null
      ? []
      : [
          `${what}${plain(marker.number)} revision ${plain(marker.revision)}, ${marker.state}, by ${plain(marker.tool)}`,
        ]),
    ...changed.map((path) => `changed  ${plain(path)}`),
    ...missing.map((path) => `missing  ${plain(path)}`),
    ...extra.map((path) => `extra    ${plain(path)}`),
    ...faults.map((fault) => `fault    ${plain(fault)}`),
    ...(fingerprint === null
      ? []
      : [
          ...(fingerprint.recorded === null || fingerprint.recorded === fingerprint.recomputed
            ? []
            : [`stated      ${grouped(fingerprint.recorded)}`]),
          `fingerprint ${grouped(fingerprint.recomputed)}`,
        ]),
    sound
      ? `${counted(listed, "file")} as listed: nothing moved`
      : `of ${counted(listed, "listed file")}: ${changed.length} changed, ${missing.length} missing, ${extra.length} extra`,
    "",
  ].join("\n");
}

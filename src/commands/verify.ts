import { resolve } from "node:path";
import { verifyIssue, type Verification } from "../publish/issue/index.ts";
import { inGroups, jsonText, plain } from "../report/plain.ts";
import { counted } from "../report/words.ts";
import { formatOption, UsageError, type Command } from "./command.ts";

export const verify: Command = {
  name: "verify",
  summary: "compare a published issue with its hash list and its fingerprints",
  arguments: [{ name: "issue", required: true, means: "folder of the issue, wherever it lies now" }],
  options: {
    expect: {
      value: "HASH",
      means: "fingerprint it must have, of the issue or of its evidence, as written down when it was received",
    },
    format: formatOption(["text", "json"]),
  },
  help: [
    "Hashes every file again, lists what was changed, is missing or was added, recomputes the evidence fingerprint from the " +
      "records and originals, and compares it with the one the pages print. `sha256sum -c hashes.sha256` inside the folder " +
      "checks the same hashes.",
    "Whoever changes a page can change its line in the hash list too. Only the issue's fingerprint, the SHA-256 of " +
      "hashes.sha256, tells that, if it was written down elsewhere: give it with --expect, in 64 hex digits; spaces do not count. " +
      "The evidence fingerprint is accepted as well, and covers records and originals only.",
    "Exit 0: nothing moved, and the expected fingerprint is one of the two. Exit 1: something did, or it is not. Exit 2: the " +
      "folder is not an issue.",
  ],
  async run(given, effects) {
    const shown = given.arguments[0] ?? "";
    const expected = expectedHash(given.options.get("expect"));
    effects.progress("hashing");
    const result = await verifyIssue(resolve(effects.cwd, shown));
    const match = expected === undefined ? undefined : matchOf(result, expected);
    if (given.options.get("format") === "json") {
      const { marker, ...found } = result;
      const expectation = expected === undefined ? null : { fingerprint: expected, is: match ?? null };
      effects.print(jsonText({ tool: effects.engine.tool, format: 1, issue: marker, ...found, expected: expectation }));
    } else effects.print(verificationText(result, expected));
    return result.sound && (expected === undefined || match !== undefined) ? 0 : 1;
  },
};

function expectedHash(text: string | undefined): string | undefined {
  if (text === undefined) return undefined;
  const hash = text.replaceAll(/\s/g, "").toLowerCase();
  if (/^[0-9a-f]{64}$/.test(hash)) return hash;
  throw new UsageError(
    `--expect is "${plain(text)}"; expected a fingerprint of 64 hex digits (0 to 9, a to f), whole, with or without spaces`,
  );
}

/** Which of the two fingerprints was expected; undefined for neither. */
function matchOf({ fingerprint, issueFingerprint }: Verification, expected: string): "issue" | "evidence" | undefined {
  if (expected === issueFingerprint) return "issue";
  return expected === fingerprint?.recomputed ? "evidence" : undefined;
}

function verificationText(result: Verification, expected: string | undefined): string {
  const { marker, listed, changed, missing, extra, emptyFolders, faults, fingerprint, issueFingerprint, sound } =
    result;
  const what = marker?.holds === "findings" ? "findings report of " : "";
  const named =
    marker === null
      ? []
      : [
          `${what}${plain(marker.number)} revision ${plain(marker.revision)}, ${marker.state}, by ${plain(marker.tool)}`,
        ];
  return [
    ...named,
    ...changed.map((path) => `changed  ${plain(path)}`),
    ...missing.map((path) => `missing  ${plain(path)}`),
    ...extra.map((path) => `extra    ${plain(path)}`),
    ...emptyFolders.map((path) => `extra    ${plain(path)}/, an empty folder`),
    ...faults.map((fault) => `fault    ${plain(fault)}`),
    ...(fingerprint === null
      ? []
      : [
          ...(fingerprint.recorded === null || fingerprint.recorded === fingerprint.recomputed
            ? []
            : [`stated               ${inGroups(fingerprint.recorded)}`]),
          `evidence fingerprint ${inGroups(fingerprint.recomputed)}`,
        ]),
    ...(issueFingerprint === null ? [] : [`issue's fingerprint  ${inGroups(issueFingerprint)}`]),
    sound
      ? `${counted(listed, "file")} as listed: nothing moved`
      : `of ${counted(listed, "listed file")}: ${changed.length} changed, ${missing.length} missing, ${extra.length + emptyFolders.length} extra`,
    ...expectationLines(result, expected),
    "",
  ].join("\n");
}

function expectationLines(result: Verification, expected: string | undefined): readonly string[] {
  if (expected === undefined)
    return [
      "a page changed together with its line in hashes.sha256 shows only in the issue's fingerprint: compare it with the one written down, or give that with --expect",
    ];
  const match = matchOf(result, expected);
  if (match === "issue")
    return [
      result.sound
        ? "expected: the issue's fingerprint, and it is: every byte is as it was issued"
        : "expected: the issue's fingerprint, and the hash list is the one that was issued; what is named above is not as it lists",
    ];
  if (match === "evidence")
    return [
      "expected: the evidence fingerprint, and it is. It covers records and originals; pages, PDF and findings are covered by the issue's fingerprint only",
    ];
  return [
    `expected             ${inGroups(expected)}`,
    "that is neither the issue's fingerprint nor the evidence's: this is not the issue it was taken from, or it was changed",
  ];
}

import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { describe, expect, test } from "vitest";

const src = join(import.meta.dirname, "../src");

function filesIn(dir: string): string[] {
  return readdirSync(dir).flatMap((name) => {
    const path = join(dir, name);
    return statSync(path).isDirectory() ? filesIn(path) : name.endsWith(".ts") ? [path] : [];
  });
}

const all = filesIn(src);
const importPattern = /^(?:import|export)[^;]*?from "(\.[^"]+)";/gms;

function importsOf(file: string): string[] {
  return [...readFileSync(file, "utf8").matchAll(importPattern)].map((match) =>
    relative(src, join(dirname(file), match[1] ?? "")),
  );
}

/** The stages of judging, in order. */
const stages = ["reading", "court", "compute", "plan", "judge"];

/** What each folder of src/ may import, beside itself. Whatever is not listed here may not be imported. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  model: [],
  // Bytes of others: it knows neither records nor pages of ours.
  foreign: ["model"],
  // Cells of spreadsheets, in and out: it knows neither records nor schemas.
  sheets: ["model", "foreign"],
  // Sheets to records and back: kinds are arguments.
  imports: ["model", "load", "link", "sheets"],
  // What a book reaches of its shelves is a question of links.
  load: ["model", "foreign", "link"],
  link: ["model"],
  // Texts of papers and values of records: it knows neither files nor rules.
  readback: ["model"],
  // Properties of water and steam are physics: they know nothing of books.
  steam: [],
  calculations: ["model", "steam"],
  rules: ["model", "requirements"],
  // They ask of a day what rules ask of a use, by the same functions.
  expiries: ["model", "rules"],
  requirements: ["model", "calculations"],
  facts: ["model"],
  chains: ["model"],
  profiles: ["model"],
  scopes: ["model"],
  // The stages know no definition by name: they get them as arguments. Each uses only those before it.
  reading: ["model", "link"],
  court: ["model", "reading"],
  compute: ["model", "reading", "court"],
  plan: ["model", "link", "reading", "court", "compute"],
  judge: ["model", "link", "readback", "reading", "court", "compute", "plan"],
  // Answers that others printed: definitions are asked as a reader would ask them.
  verification: ["model", "calculations", "compute", "steam"],
  // A book before its evidence, and what it takes of the one before.
  begin: ["model", "load", "link"],
  report: ["model"],
  // What is owed, from a judged book: no kind, rule or register by name.
  owed: ["model", "report", "sheets"],
  commands: ["model", "load", "link", ...stages, "report", "publish", "foreign", "sheets", "imports", "begin", "owed"],
};

/** Folders that put all together, or print it, and may know any other; HTML and PDF have a test of their own. */
const free = ["publish", "closers", "tooling"];

/** Files that belong to no folder: what everything is put together from, and what all may know. */
const roots = ["cli.ts", "definitions.ts", "demo.ts", "index.ts", "pipeline.ts", "proof.ts", "root.ts"];
const known = ["root.ts", "proof.ts"];

describe("dependencies point one way", () => {
  test("every folder is listed, and so is every file beside them", () => {
    const names = [...new Set(all.map((file) => relative(src, file).split("/")[0] ?? ""))];
    const stray = names.filter((name) => ![...Object.keys(allowed), ...free, ...roots].includes(name));
    expect(stray.filter((name) => !["generated", "tables"].includes(name))).toEqual([]);
  });

  test("no folder but commands, publishing and tooling needs what puts all together", () => {
    const wrong = all
      .map((file) => relative(src, file))
      .filter((from) => from.includes("/") && !["commands", "publish", "tooling"].includes(from.split("/")[0] ?? ""))
      .flatMap((from) => importsOf(join(src, from)).map((target) => ({ from, target })))
      .filter(({ target }) => !target.includes("/") && !known.includes(target));
    expect(wrong).toEqual([]);
  });

  for (const [folder, may] of Object.entries(allowed))
    test(`${folder}/ imports only ${may.length === 0 ? "itself" : may.join(", ")}`, () => {
      const wrong = all
        .filter((file) => relative(src, file).startsWith(`${folder}/`))
        .flatMap((file) => importsOf(file).map((target) => ({ from: relative(src, file), target })))
        .filter(({ target }) => target.includes("/") && ![folder, ...may].includes(target.split("/")[0] ?? ""));
      expect(wrong).toEqual([]);
    });

  test("HTML and PDF never import each other, and neither imports a stage", () => {
    const notTheirs = ["load", "link", ...stages, "rules", "calculations"];
    const wrong = all.flatMap((file) => {
      const from = relative(src, file);
      const other = from.startsWith("publish/html/")
        ? "publish/pdf/"
        : from.startsWith("publish/pdf/")
          ? "publish/html/"
          : null;
      if (other === null) return [];
      return importsOf(file)
        .filter((target) => target.startsWith(other) || notTheirs.includes(target.split("/")[0] ?? ""))
        .map((target) => `${from} → ${target}`);
    });
    expect(wrong).toEqual([]);
  });
});

test("pages print what was judged: no table, profile, rule or comparison is theirs", () => {
  const judging = [
    "profiles",
    "calculations",
    "rules",
    "facts",
    "requirements",
    "scopes",
    "closers",
    "steam",
    "compute",
  ];
  const wrong = all.flatMap((file) => {
    const from = relative(src, file);
    if (!from.startsWith("publish/")) return [];
    const imported = importsOf(file).filter(
      (target) => judging.includes(target.split("/")[0] ?? "") || target === "model/compare.ts",
    );
    // The page that lists the tables in force is the only one that opens them.
    const opened = from !== "publish/outline/judged-with-page.ts" && /judged\.tables/.test(readFileSync(file, "utf8"));
    return [...imported, ...(opened ? ["judged.tables"] : [])].map((target) => `${from} → ${target}`);
  });
  expect(wrong).toEqual([]);
});

describe("lists are complete", () => {
  // The others are made from their folders (tests/tooling).
  for (const folder of ["profiles", "requirements"])
    test(`src/${folder}/index.ts reaches every file of its folder`, () => {
      const files = readdirSync(join(src, folder)).filter((name) => name.endsWith(".ts") && name !== "index.ts");
      const reached = new Set<string>();
      const visit = (file: string): void => {
        for (const target of importsOf(join(src, file)))
          if (target.startsWith(`${folder}/`) && !reached.has(target)) {
            reached.add(target);
            visit(target);
          }
      };
      visit(`${folder}/index.ts`);
      // What another folder takes from here is reached from there.
      for (const file of all)
        for (const target of importsOf(file)) if (target.startsWith(`${folder}/`)) reached.add(target);
      expect(files.filter((name) => !reached.has(`${folder}/${name}`))).toEqual([]);
    });
});

test("nothing in the stages and the publications names a certain sort of equipment", () => {
  const wrong = all
    .filter((file) => /^(reading|court|compute|plan|judge|link|load|publish|report)\//.test(relative(src, file)))
    .flatMap((file) => {
      const found = /\b(boiler|receiver|vessel|tank)\b/i.exec(readFileSync(file, "utf8"));
      return found === null ? [] : [`${relative(src, file)}: ${found[0]}`];
    });
  expect(wrong).toEqual([]);
});

test("no two files need each other's values", () => {
  const values = /^(?:import|export)(?! type )[^;]*?from "(\.[^"]+)";/gms;
  const needs = new Map(
    all.map((file) => [
      relative(src, file),
      [...readFileSync(file, "utf8").matchAll(values)].map((match) =>
        relative(src, join(dirname(file), match[1] ?? "")),
      ),
    ]),
  );
  const done = new Set<string>();
  const circles: string[] = [];
  const visit = (file: string, way: readonly string[]): void => {
    if (way.includes(file)) circles.push([...way.slice(way.indexOf(file)), file].join(" → "));
    if (done.has(file) || way.includes(file)) return;
    for (const target of needs.get(file) ?? []) visit(target, [...way, file]);
    done.add(file);
  };
  for (const file of needs.keys()) visit(file, []);
  expect(circles).toEqual([]);
});

test("no stage, page or command names a scope", () => {
  const ids = readdirSync(join(src, "scopes"))
    .filter((name) => name !== "index.ts")
    .map((name) => name.replace(/\.ts$/, ""));
  expect(ids.length).toBeGreaterThan(3);
  const named = new RegExp(`"(${ids.join("|")})"`);
  const wrong = all
    .filter((file) =>
      /^(reading|court|compute|plan|judge|link|load|publish|report|commands)\//.test(relative(src, file)),
    )
    .flatMap((file) => {
      const found = named.exec(readFileSync(file, "utf8"));
      return found === null ? [] : [`${relative(src, file)}: ${found[0]}`];
    });
  expect(wrong).toEqual([]);
});

test("what begins a book names no kind but the book and its issue", () => {
  const kinds = readdirSync(join(src, "../schemas")).flatMap(
    (name) => /^([a-z-]+)\.schema\.json$/.exec(name)?.[1] ?? [],
  );
  expect(kinds.length).toBeGreaterThan(30);
  const others = kinds.filter((name) => !["book", "issue"].includes(name)).join("|");
  // The role of a file is no kind, though one is called like it.
  const named = new RegExp(`(?<!role === )"(?:${others})"`, "g");
  const wrong = all
    .filter((file) => relative(src, file).startsWith("begin/"))
    .flatMap((file) =>
      [...readFileSync(file, "utf8").matchAll(named)].map(([found]) => `${relative(src, file)}: ${found}`),
    );
  expect(wrong).toEqual([]);
});

/** Signs that hold keys and addresses together: who reads or prints them, and what they are there. No other file does. */
const signs: readonly {
  readonly what: string;
  readonly pattern: RegExp;
  readonly homes: Readonly<Record<string, string>>;
}[] = [
  {
    what: "a text is taken apart or looked through at `:`, `#`, `@` or `|`",
    pattern: /\b(?:split|indexOf|lastIndexOf|includes|search|replace)\((?:"[:#@|]"|\/\[#@\]\/)/,
    homes: {
      "model/record.ts": "addresses",
      "model/subject.ts": "ids of subjects",
      "model/kind-text.ts": "kinds with lists",
      "model/outcome-name.ts": "names of outcomes",
      "model/finding-key.ts": "keys of findings",
      "link/target.ts": "links as fields write them",
      "rules/welding/weld-log.ts": "a link in a sentence",
      "readback/wanted.ts": "hours and minutes",
      "foreign/pdf/parse.ts": "names of PDF",
      "sheets/addresses.ts": "ranges of cells",
      "sheets/xlsx/sheet.ts": "ranges of cells",
      "sheets/xlsx/xml.ts": "prefixes of XML",
      "sheets/xlsx/formats.ts": "formats of numbers",
      "publish/html/links.ts": "fragments of web addresses",
      "publish/outline/landing.ts": "fragments of web addresses",
      "publish/pdf/assemble.ts": "fragments of web addresses",
      "publish/pdf/index.ts": "fragments of web addresses",
    },
  },
  {
    what: "a kind and an id are put together by `:`",
    pattern: /\$\{[^}]*\bkind(?:Name|\.name)?(?: \?\? "")?\}:(?! )/,
    homes: {
      "model/record.ts": "addresses",
      "model/path.ts": "steps back",
      "link/target.ts": "links as fields write them",
      "reading/notes.ts": "fields of kinds",
      "reading/absent.ts": "steps back in keys of absences",
    },
  },
  {
    what: "parts of a key are put together by `|`",
    pattern: /\}\|\$\{|`[a-z-]+\|\$\{|join\("\|"\)/,
    homes: {
      "model/finding-key.ts": "keys of findings",
      "model/outcome-name.ts": "names of outcomes",
      "model/calculation-key.ts": "calculations of subjects",
      "reading/absent.ts": "keys of absences",
      "reading/notes.ts": "links back to a place",
      "reading/look-up.ts": "cells of a table",
      "load/validate.ts": "what tells faults of one file apart",
    },
  },
  {
    what: "a list or a row follows behind `#`",
    pattern: /\}#\$\{/,
    homes: {
      "model/subject.ts": "ids of subjects",
      "model/kind-text.ts": "kinds with lists",
      "link/duplicates.ts": "rows that bear one name",
      "publish/pdf/assemble.ts": "fragments of web addresses",
      "publish/pdf/atoms.ts": "fragments of web addresses",
    },
  },
];

describe("keys and addresses have one printer and one parser each", () => {
  for (const { what, pattern, homes } of signs)
    test(`where ${what}`, () => {
      const found = all.filter((file) => pattern.test(readFileSync(file, "utf8"))).map((file) => relative(src, file));
      expect(found.sort()).toEqual(Object.keys(homes).sort());
    });
});

test("only paths of files are taken apart at `/`: pointers, addresses and names of definitions have their parsers", () => {
  const parsers = ["model/json.ts", "model/record.ts", "model/outcome-name.ts"];
  const files = ["path", "file", "folder", "folded", "from", "way", "part", "Type"];
  const cut = /\b(\w+)(?:\.slice\([^)]*\))?\.(?:split|indexOf|lastIndexOf)\("\/"/g;
  const found = all.map((file) => ({
    file: relative(src, file),
    cut: [...readFileSync(file, "utf8").matchAll(cut)].map(([, name = ""]) => name),
  }));
  expect(found.filter(({ file, cut: names }) => parsers.includes(file) && names.length === 0)).toEqual([]);
  expect(
    found.filter(({ file, cut: names }) => !parsers.includes(file) && names.some((name) => !files.includes(name))),
  ).toEqual([]);
});

test("paths of fields are taken apart in one place", () => {
  const found = all
    .filter((file) => /\.split\("\."\)/.test(readFileSync(file, "utf8")))
    .map((file) => relative(src, file));
  // The other takes apart the digits of a number.
  expect(found.sort()).toEqual(["model/field-steps.ts", "model/print-number.ts"]);
});

test("findings are made by one builder", () => {
  // Whoever writes one by hand has to say that no exception answers it yet.
  const byHand = all
    .filter((file) => /\bexception: null\b|: Finding = \{/.test(readFileSync(file, "utf8")))
    .map((file) => relative(src, file));
  // The entry of a finding that may still grow, and the builder itself.
  expect(byHand.sort()).toEqual(["court/entries.ts", "model/new-finding.ts"]);
});

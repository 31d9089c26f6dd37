import { expect, test } from "vitest";
import { loadKinds } from "../../src/load/kinds.ts";
import { shippedDefinitions } from "../../src/definitions.ts";
import { readFields, unreadFields, valueFields } from "../../src/judge/unread.ts";
import { builtInRules } from "../../src/judge/built-in.ts";
import { fileRules } from "../../src/load/file-rules.ts";
import { unreadOf } from "../../src/model/unread.ts";

const kinds = [...loadKinds(["schemas"]).values()].filter(({ derived }) => !derived);
const definitions = shippedDefinitions(new Map(kinds.map((kind) => [kind.name, kind])));
const builtIn = [...builtInRules, ...fileRules];
const read = readFields(definitions, builtIn);
const unread = kinds.flatMap((kind) =>
  unreadFields(kind, read).map(({ path, field }) => ({ at: `${kind.name} ${path}`, field })),
);

test("what nothing reads says why", () => {
  expect(unread.filter(({ field }) => field.unread === undefined).map(({ at }) => at)).toEqual([]);
});

test("what has no method here is a list that cannot grow unseen", async () => {
  const lines = unread.flatMap(({ at, field }) =>
    field.unread?.reason === "no method here" ? [`${at}: ${field.unread.why}`] : [],
  );
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("no-method.txt");
});

test("what is read does not say that it is not", () => {
  const common = new Set(["id", "remarks", "attachments", "imported"]);
  const said = kinds.flatMap((kind) =>
    valueFields(kind).flatMap(({ path, field }) =>
      !common.has(path.split(".")[0] ?? "") &&
      field.unread !== undefined &&
      (read.has(field) || (field.item !== undefined && read.has(field.item)))
        ? [`${kind.name} ${path}`]
        : [],
    ),
  );
  expect(said).toEqual([]);
});

test("presence is no reading: a field of which a rule asks only whether it is there stays unread", () => {
  const [kind] = kinds.filter(({ name }) => name === "joint");
  expect(kind).toBeDefined();
  const asks = (reading: "exists" | "text") =>
    readFields(
      {
        ...definitions,
        rules: [
          {
            id: "asks",
            title: "asks",
            basis: { type: "ours", note: "" } as never,
            kind: "joint",
            severity: "note",
            owner: "quality",
            inputs: { mark: { path: "mark", need: "optional", many: false, reading: { type: reading } } },
            check: () => [],
            examples: [],
          },
        ],
        calculations: [],
        registers: [],
        closers: [],
        facts: [],
      },
      builtIn,
    );
  const mark = kind?.fields.get("mark");
  expect(mark).toBeDefined();
  expect(asks("exists").has(mark as never)).toBe(false);
  expect(asks("text").has(mark as never)).toBe(true);
});

test.each([
  ["identity", { reason: "identity" }],
  ["no method here", undefined],
  [{ "no method here": "" }, undefined],
  [{ "no method here": "the film is not looked at" }, { reason: "no method here", why: "the film is not looked at" }],
  [{ "no method here": "x", other: "y" }, undefined],
  ["because", undefined],
])("x-unread %j", (word, expected) => {
  expect(unreadOf(word)).toEqual(expected);
});

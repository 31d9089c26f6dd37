import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { isList, isObject, type Json, type JsonObject } from "../../src/model/json.ts";
import type { BookRecord } from "../../src/model/record.ts";
import { readBook } from "../../src/pipeline.ts";

// Two books of one maker: what one says of the shop, or of the other's job, the other must say too.

const stringOf = (value: Json | undefined) => (typeof value === "string" ? value : "");

const books = ["air-receiver", "air-receiver-interim", "control-air", "boiler"].map((name) => {
  const { records, kinds } = readBook(join(import.meta.dirname, "../../demo-data", name, "book"));
  const of = (kind: string) => records.filter((record) => record.kind === kind);
  const job = stringOf(of("equipment")[0]?.value["serial"]).replace(/-\d+$/, "");
  return { name, records, kinds, of, job };
});

/** Kinds that are of the shop and not of one job, with the field that tells the real thing, printed on it. */
const shopWide: Readonly<Record<string, string>> = {
  organisation: "name",
  person: "name",
  "welder-qualification": "certificate",
  "ndt-personnel": "certificate",
  instrument: "serial",
  "mill-approval": "certificate",
  procedure: "number",
  "welding-procedure": "title",
  "procedure-qualification": "certificate",
  "consumable-batch": "batch",
};

/** What belongs to the copy of a paper in one book, or to the form of its file, not to the thing. */
const ofTheBook = ["kind", "source", "attachments", "specimen"];

/** Fields that two values both state, and state differently; of a list with a key only rows that stand in both. */
function differences(a: Json | undefined, b: Json | undefined, keys: ReadonlyMap<string, string>, at = ""): string[] {
  if (isObject(a) && isObject(b))
    return [...new Set([...Object.keys(a), ...Object.keys(b)])]
      .filter((name) => at !== "" || !ofTheBook.includes(name))
      .flatMap((name) => differences(a[name], b[name], keys, at === "" ? name : `${at}.${name}`));
  const key = keys.get(at);
  if (key !== undefined && isList(a) && isList(b))
    return a.flatMap((row) => {
      const other = b.find((one) => isObject(one) && isObject(row) && one[key] === row[key]);
      return other === undefined ? [] : differences(row, other, keys, at);
    });
  return JSON.stringify(a) === JSON.stringify(b) ? [] : [at];
}

const pairs = books.flatMap((one, index) => books.slice(index + 1).map((other) => [one, other] as const));

describe("what two books say of the shop agrees", () => {
  test.each(Object.entries(shopWide))("%s: one id is one thing, and one %s is one id", (kind, printed) => {
    const keys = new Map<string, string>();
    for (const field of books[0]?.kinds.get(kind)?.fields.values() ?? [])
      if (field.rowKey !== undefined) keys.set(field.name, field.rowKey);
    // The same role signs again on another day.
    keys.set("signatures", "date");
    const faults = pairs.flatMap(([one, other]) =>
      one.of(kind).flatMap((record) => {
        const same = other.of(kind).find(({ id }) => id === record.id);
        const twin = other.of(kind).find(({ value }) => value[printed] === record.value[printed]);
        return [
          ...(same === undefined ? [] : differences(record.value, same.value, keys)).map((at) => `${record.id} ${at}`),
          ...(twin === undefined || twin.id === record.id ? [] : [`${record.id} is ${twin.id}`]),
        ].map((fault) => `${one.name}, ${other.name}: ${fault}`);
      }),
    );
    expect(faults).toEqual([]);
  });
});

/** Every text in a value, with its address. */
function texts(value: Json, at = ""): (readonly [at: string, text: string])[] {
  if (typeof value === "string") return [[at, value]];
  if (isList(value)) return value.flatMap((one, index) => texts(one, `${at}/${index}`));
  return isObject(value) ? Object.entries(value).flatMap(([name, one]) => texts(one, `${at}/${name}`)) : [];
}

/** The days on which a person welded at a joint, a repair or a group of tube ends of a job by a process. */
function weldedOn(job: (typeof books)[number], weld: string, welder: Json, process: Json): readonly string[] {
  const [, kind = "", id = ""] = /^(.+) (\S+)$/.exec(weld) ?? [];
  const whole = (name: string) => job.of(name).flatMap(({ id: own, value }) => (own === id ? [value] : []));
  const procedureOf = (group: JsonObject) =>
    job.of("welding-procedure").find(({ id: own }) => own === stringOf(group["weldingProcedure"]).split("@")[0]);
  const work: readonly Json[] =
    kind === "repair"
      ? whole("repair")
      : kind === "tube ends"
        ? whole("tube-end-group").flatMap((group) =>
            processesOf(procedureOf(group)?.value ?? {}).map((one) => ({ ...group, process: one })),
          )
        : job.of("weld-log").flatMap(({ value: { joint, runs } }) => (joint === id && isList(runs) ? runs : []));
  return work
    .filter(isObject)
    .filter((one) => isList(one["welders"]) && one["welders"].includes(welder) && one["process"] === process)
    .map(({ date }) => stringOf(date).slice(0, 10));
}

/** Processes of a welding procedure, of whatever revision. */
function processesOf({ revisions }: JsonObject): readonly Json[] {
  return (isList(revisions) ? revisions : []).flatMap((one) =>
    isObject(one) && isList(one["processes"]) ? one["processes"] : [],
  );
}

/** Confirmations of a welder's certificate: the work they rest on, as "job TQ417, joint M01". */
function confirmations({
  value,
}: BookRecord): { readonly date: string; readonly job: string; readonly weld: string }[] {
  return (isList(value["confirmations"]) ? value["confirmations"] : []).filter(isObject).map((row) => {
    const [, job = "", weld = ""] =
      /^job (TQ\d+), ((?:joint|repair|tube ends) [\w-]+)$/.exec(stringOf(row["evidence"])) ?? [];
    return { date: stringOf(row["date"]), job, weld };
  });
}

describe("what a book cites of a job that has a book agrees with it", () => {
  test("a welder is confirmed by a weld of his own, by that process, no older than half a year", () => {
    const certificates = books.flatMap((book) => book.of("welder-qualification").map((record) => ({ book, record })));
    const checked = certificates.flatMap(({ book, record }) =>
      confirmations(record).flatMap(({ date, job, weld }) => {
        expect(weld, `${book.name} ${record.id}: the work of ${date} can be read`).not.toBe("");
        const cited = books.find((one) => one.job === job && !one.name.endsWith("interim"));
        if (cited === undefined) return [];
        const { person = null, process = null } = record.value;
        const days = weldedOn(cited, weld, person, process);
        const halfYear = 184 * 86_400_000;
        const fit = days.some((day) => day <= date && Date.parse(date) - Date.parse(day) < halfYear);
        return [[`${book.name} ${record.id}: ${job}, ${weld}`, fit] as const];
      }),
    );
    expect(checked.filter(([, fit]) => !fit)).toEqual([]);
    expect(checked.length).toBeGreaterThan(8);
  });

  test("nothing else of another job is cited", () => {
    const cited = books.flatMap(({ job, records, name }) => {
      const others = new Set(books.map((one) => one.job).filter((one) => one !== job));
      return records
        .flatMap((record) => texts(record.value).map(([at, text]) => [record, at, text] as const))
        .filter(([record, at]) => !(record.kind === "welder-qualification" && at.startsWith("/confirmations/")))
        .filter(([, , text]) => [...others].some((other) => text.includes(other)))
        .map(([record, at]) => `${name} ${record.kind} ${record.id} ${at}`);
    });
    expect(cited).toEqual([]);
  });
});

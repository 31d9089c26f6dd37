import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { expectKindMissed, expectMissed, kindsOf, takeable, type Taken } from "../support/deletions.ts";
import { boilerBook, demoBook, soundBoiler } from "../support/demo-book.ts";

// The boiler has over eight hundred records, and each judgement takes half a second: every kind is taken out whole, every
// record of the kinds the receiver lacks singly, and of the others a fixed choice.

const records = takeable(boilerBook);
const ofTheReceiver = new Set(kindsOf(takeable(demoBook)));
const perKind = 2;

const fieldsOf = ({ kind, id }: Taken) => soundBoiler().graph.byKind.get(kind)?.get(id)?.value ?? {};

/** Sheets no register asks for: the recomputation is printed without them, and they are only compared with it. */
const sheetsNotAsked = ["test-stress", "tube-hole", "pressure-hold"];

/** Why a record may go unnoticed, if it may. */
function unnoticed(record: Taken): string | undefined {
  if (record.kind === "inspection-step" && record.id === "ITP-360")
    return "the last step of the plan: nothing comes after it and nothing names it";
  if (record.kind !== "calculation-sheet") return undefined;
  const { calculation, subject } = fieldsOf(record);
  if (typeof calculation === "string" && sheetsNotAsked.includes(calculation))
    return "no register asks for a sheet of this calculation";
  const part = typeof subject === "string" ? subject.replace(/^part:/, "") : "";
  const heating = fieldsOf({ kind: "part", id: part })["heating"];
  return calculation === "metal-temperature" && heating !== "convection" && heating !== "radiation"
    ? "a part that no hot gas heats is as warm as the water: no sheet of its temperature is asked for"
    : undefined;
}

const inOrder = (list: readonly Taken[]) =>
  [...list].sort((a, b) => (digest(a) < digest(b) ? -1 : digest(a) > digest(b) ? 1 : 0));
const digest = ({ kind, id }: Taken) => createHash("sha256").update(`boiler ${kind} ${id}`).digest("hex");

/** Some of each kind, as their digests fall; some of those that may go unnoticed, and of those that may not. */
const chosen = kindsOf(records).flatMap((kind) => {
  const own = inOrder(records.filter((record) => record.kind === kind));
  if (!ofTheReceiver.has(kind)) return own;
  const isMissed = (record: Taken) => unnoticed(record) === undefined;
  return [...own.filter(isMissed).slice(0, perKind), ...own.filter((one) => !isMissed(one)).slice(0, perKind)];
});

describe("a record that is taken out is missed once, by name", () => {
  test.each(chosen)("$kind $id", (record) => {
    expectMissed(boilerBook, soundBoiler(), record, unnoticed(record));
  });
});

/** The register asks the book for four documents by their sort; a hoop whose joints are gone supports nothing. */
const severalRoots: Readonly<Record<string, number>> = { document: 4, joint: 2 };

describe("a kind that is taken out whole is missed once", () => {
  test.each(kindsOf(records))("%s", (kind) => {
    expectKindMissed(boilerBook, soundBoiler(), kind, severalRoots[kind] ?? 1);
  });
});

test("the kinds the receiver lacks are all there, and few records may go unnoticed", () => {
  expect(chosen.length).toBeGreaterThan(80);
  expect(kindsOf(chosen)).toEqual(kindsOf(records));
  expect(records.filter((record) => unnoticed(record) !== undefined)).toHaveLength(26);
});

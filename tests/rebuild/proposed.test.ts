import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { propose } from "../../src/imports/propose.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { isList, isObject, type Json, type JsonObject } from "../../src/model/json.ts";
import { isSheetFault, type Workbook } from "../../src/sheets/cells.ts";
import { readSheetFile } from "../../src/sheets/read.ts";
import { lastWorkbook, shopMaps, workbooks } from "./way.ts";

const kinds = loadKinds(["schemas"]);
const members = (one: Json | undefined): JsonObject => (isObject(one) ? one : {});
const said = (one: Json | undefined): string => (typeof one === "string" ? one : "");

/** A tab of the shop's workbooks: the map the shop made of it, and what is proposed for it. */
interface Tab {
  readonly name: string;
  readonly made: JsonObject;
  /** With nobody's help. */
  readonly proposed: JsonObject | undefined;
  /** The same where its kind was named. */
  readonly helped: JsonObject | undefined;
}

let tabs: readonly Tab[];
beforeAll(async () => {
  const all: Tab[] = [];
  for (const name of [...workbooks, lastWorkbook]) {
    const file = `${name}.xlsx`;
    const book = await readSheetFile(readFileSync(join(import.meta.dirname, "sheets", file)), file, {});
    if (isSheetFault(book)) throw new Error(book.message);
    const made = shopMaps().get(`${name}.json`);
    all.push(...tabsOf(book, (isList(made) ? made : [made]).map(members)));
  }
  tabs = all;
}, 180_000);

function tabsOf(book: Workbook, made: readonly JsonObject[]): readonly Tab[] {
  const named = new Map(
    made.flatMap((map) => {
      const kind = kinds.get(said(map["kind"]));
      return kind === undefined ? [] : [[said(map["sheet"]), kind] as const];
    }),
  );
  const alone = propose(book, kinds, { bySheet: new Map() }).maps;
  const helped = propose(book, kinds, { bySheet: named }).maps;
  const ofTab = (maps: readonly JsonObject[], sheet: string) => maps.find((map) => map["sheet"] === sheet);
  return made.map((map) => {
    const name = said(map["sheet"]);
    return { name, made: map, proposed: ofTab(alone, name), helped: ofTab(helped, name) };
  });
}

const headings = (map: JsonObject | undefined) =>
  Object.entries(members(map?.["columns"])).map(
    ([heading, column]) => [heading, said(members(column)["to"]).replaceAll("[]", "")] as const,
  );

const readme = readFileSync("README.md", "utf8").replaceAll(/\s+/g, " ");

describe("a first import of a shop's own workbooks", () => {
  test("tells by the headings alone what a tab holds, or asks; it takes none for another", () => {
    const told = tabs.filter(({ made, proposed }) => proposed !== undefined && proposed["kind"] === made["kind"]);
    const wrong = tabs.filter(({ made, proposed }) => proposed !== undefined && proposed["kind"] !== made["kind"]);
    expect(wrong.map(({ name, proposed }) => [name, proposed?.["kind"]])).toEqual([]);
    expect(readme).toContain(`tells what ${told.length} of the ${tabs.length} tabs hold`);
  });

  test("proposes where most headings go; where it is wrong is listed", () => {
    const [right, wrong]: [string[], string[]] = [[], []];
    for (const { name, made, helped } of tabs) {
      const meant = new Map(headings(made));
      for (const [heading, to] of headings(helped))
        if (to !== "" && meant.has(heading))
          (to === meant.get(heading) ? right : wrong).push(`${name}, ${heading}: ${to}`);
    }
    const count = tabs.reduce((sum, { made }) => sum + headings(made).length, 0);
    expect(readme).toContain(`**${right.length} of ${count} headings**`);
    // The heading has the name of another field in the trade: a person sees it in the map that is proposed.
    expect(wrong.sort()).toEqual([
      "Body, Body: body",
      "Pressure test, Gauge A: readings.gaugeA",
      "Pressure test, Gauge B: readings.gaugeB",
      "Reports, Film: rows.film",
      "Safety valve, Body: certificate.body",
      "WPQR, Test: tests.test",
    ]);
  });
});

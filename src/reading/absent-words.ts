import type { Field } from "../model/kind.ts";
import { parsePath, type Step } from "../model/path.ts";
import { fieldOfPointer } from "../model/stable.ts";
import { kindWords } from "../model/titles.ts";
import { fieldWords, oneOf } from "../model/words.ts";
import { lackWords } from "./lack-words.ts";
import { groupsOf } from "./step-groups.ts";
import type { Absence, World } from "./world.ts";

/** What is absent, as people say it: "NDT report with method RT", "nominal thickness". */
export const whatIs = (world: World, { owner, step, filters, lacks }: Absence): string =>
  lacks === undefined
    ? pathWords(world, owner, `${step}${filters}`)
    : lackWords(world, lacks, (one) => whatIs(world, one));

/** Where a path leads from a record or row, as people say it: "direction of tensile tests". */
export function pathWords(
  world: World,
  owner: Pick<NonNullable<Absence["owner"]>, "record" | "pointer"> | null,
  path: string,
): string {
  const { steps } = parsePath(path);
  const record = owner?.record;
  const kind = record === undefined ? undefined : world.kinds.get(record.kind);
  const at = record === undefined ? undefined : fieldOfPointer(kind?.fields, record.value, owner?.pointer ?? "");
  let fields = owner?.pointer === "" ? kind?.fields : at?.fields;
  const words: string[] = [];
  for (const { head, filters: tail } of groupsOf(steps)) {
    if (head === null || head.type === "record") continue;
    const field = head.type === "field" ? fields?.get(head.name) : undefined;
    const inner = head.type === "back" || head.type === "all" ? world.kinds.get(head.kind)?.fields : fieldsOf(field);
    words.push(
      `${headWords(world, head, field, tail.length > 0)}${tail.map((one) => filterWords(world, one)).join("")}`,
    );
    fields = inner;
  }
  return words.reverse().join(" of ");
}

const fieldsOf = (field: Field | undefined) => field?.fields ?? field?.item?.fields;

function headWords(world: World, head: Step, field: Field | undefined, single: boolean): string {
  if (head.type === "back" || head.type === "all") return kindWords(world.kinds, head.kind);
  if (field !== undefined) return single ? oneOf(field) : fieldWords(field);
  return head.type === "field" ? inWords(head.name) : "value";
}

/** `[record.method="RT"]` as "with method RT"; a calculation by its title. */
function filterWords({ definitions }: World, step: Step): string {
  if (step.type !== "filter") return "";
  const last = step.path.findLast((one) => one.type === "field");
  const name = last?.type === "field" ? last.name : "";
  const title = definitions.calculations.find(({ id }) => name === "calculation" && id === step.equals)?.title;
  if (title !== undefined) return ` for "${title}"`;
  return ` with ${inWords(name)} ${/^[a-z]+(-[a-z]+)+$/.test(step.equals) ? step.equals.replaceAll("-", " ") : step.equals}`;
}

const inWords = (name: string) => name.replaceAll(/([a-z0-9])([A-Z])/g, "$1 $2").toLowerCase();

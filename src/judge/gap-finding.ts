import { lowerTitle } from "../model/titles.ts";
import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import { addressOf } from "../model/record.ts";
import { digestOf } from "../model/stable.ts";
import type { Milestone } from "../model/vocabulary.ts";
import { nearest } from "../link/graph.ts";
import type { Gap } from "./absences.ts";
import { locate } from "./court.ts";
import type { Calendar } from "./milestones.ts";
import type { Absence, World } from "./world.ts";

const owed = ownChoice("what the schema, a link or the register owes is there when it is due");

export const gapRules: readonly BuiltIn[] = [
  { id: "missing", title: "What is owed is there when it is due", severity: "gap", basis: owed },
  {
    id: "waiting",
    title: "What an answered finding leaves unjudged is accepted too",
    severity: "gap",
    basis: ownChoice("an exception lifts a block; it does not judge what depended on it"),
  },
];

/** Stable name of a gap, whoever wants what is missing. */
export function gapKey(world: World, { absence }: Pick<Gap, "absence">): string {
  const { owner, name: what, target } = absence;
  if (target !== null) return `missing|${target}`;
  if (owner === null) return `missing|book|${what}`;
  const { name } = locate(world, owner.record, owner.pointer);
  return `missing|${addressOf(owner.record)}|${name === "" ? "" : `${name} `}${what}`;
}

/** Milestone at which a gap is owed first; "now" when nobody says. */
export function dueOf({ wants }: Gap, calendar: Calendar): Milestone {
  const dues = wants.flatMap(({ due }) => due ?? []);
  return dues.reduce((first, due) => (calendar.rank(due) < calendar.rank(first) ? due : first), dues[0] ?? "now");
}

/** A gap as people read it. */
export function gapFinding(world: World, gap: Gap, due: Milestone): Finding {
  const { absence, wants } = gap;
  const asked =
    wants.find((want) => want.requirement !== undefined) ?? wants.find((want) => want.by === null) ?? wants[0];
  const at = absence.owner === null ? null : locate(world, absence.owner.record, absence.owner.pointer);
  const key = gapKey(world, gap);
  const found = absence.short?.found.map((record) => addressOf(record)) ?? [];
  return {
    key,
    rule: "missing",
    severity: "gap",
    verdict: "not judged",
    subject: at?.subject ?? null,
    place: at?.place ?? { file: "book.json", pointer: "" },
    message: messageOf(world, gap),
    why: whyOf(gap, due),
    hint: hintOf(world, absence),
    basis: asked?.basis ?? owed,
    owner: asked?.owner ?? "document control",
    due: due === "now" ? null : due,
    digest: digestOf([key, ...found.sort()].join(" ")),
    related: relatedOf(world, absence),
    waiting: [],
    exception: null,
    accuses: [],
  };
}

/** "equipment E1 has 1 visual test; at least 2 are owed": of a kind its title, of a longer path the path. */
function shortMessage(
  world: World,
  name: string,
  { step, filters, kind }: Absence,
  short: NonNullable<Absence["short"]>,
) {
  const of = kind ?? /^book\.([\w-]+)/.exec(step)?.[1] ?? null;
  const rest = kind === null && of !== null ? step.slice(`book.${of}`.length) : "";
  const what = of === null ? step : `${titleOf(world, of)}${words(`${filters}${rest}`)}`;
  const where = step.startsWith("book.") ? "the book holds" : `${name} has`;
  return `${where} ${short.found.length} ${what}; at least ${short.atLeast} are owed`;
}

function messageOf(world: World, { absence, wants }: Gap): string {
  const { owner, kind, step, filters, target, short } = absence;
  const title = `${titleOf(world, kind)}${words(filters)}`;
  if (owner === null) {
    const named = wants.flatMap((want) => want.absence.target?.split(":")[1] ?? []);
    const ids = [...new Set(named)].sort();
    const list = `${ids.slice(0, 6).join(", ")}${ids.length > 6 ? ` and ${ids.length - 6} more` : ""}`;
    return `the book holds no ${title}${ids.length === 0 ? "" : `; links name ${list}`}`;
  }
  const own = `${owner.record.kind} ${owner.record.id}`;
  if (target !== null) return `${target.replace(":", " ")} is named by ${own}, but is not in the book`;
  const { where } = locate(world, owner.record, owner.pointer);
  const name = `${own}${where === "" ? "" : `, ${where},`}`;
  const what = kind === null ? `${step}${words(filters)}` : title;
  if (short !== undefined) return shortMessage(world, name, absence, short);
  return `${name} has no ${what}`;
}

const titleOf = (world: World, kind: string | null) => lowerTitle(world.kinds.get(kind ?? "")?.title ?? kind ?? "");

/** `[record.method="RT"]` as people say it. */
function words(filters: string): string {
  return filters.replaceAll(
    /\[(?:record\.)?([A-Za-z.]+)="([^"]*)"\]/g,
    (_, field: string, value: string) => ` with ${field} ${value}`,
  );
}

function whyOf({ absence, wants }: Gap, due: string): string {
  const rows = [...new Set(wants.flatMap((want) => want.requirement ?? []))];
  const named = absence.target === null ? "it is owed" : "a link names it";
  const reason = rows.length > 0 ? `owed by the register: ${rows.join("; ")}` : named;
  return due === "now" ? reason : `${reason}; due at milestone "${due}"`;
}

function hintOf(world: World, { target, kind }: Absence): string {
  if (target !== null) {
    const [kindName = "", id = ""] = target.split(":");
    const near = nearest(world.graph, { kind: kindName, id });
    return near.length > 0
      ? `add the record, or correct the link; nearest: ${near.join(", ")}`
      : "add the record, or correct the link";
  }
  if (kind !== null) return `add the ${titleOf(world, kind)} from its original`;
  return "enter the value from the original; if there is none, ask for it, or record a waiver with its ground";
}

/** All links that name an absent record. */
function relatedOf(world: World, { target }: Absence): Finding["related"] {
  const links = target === null ? [] : (world.graph.absent.get(target) ?? []);
  return links.slice(1, 21).map((link) => {
    const { subject, place } = locate(world, link.from, link.pointer);
    return { subject, place, message: `named by ${link.from.kind} ${link.from.id} too` };
  });
}

import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Absent, Missing } from "../model/missing.ts";
import type { Finding } from "../model/finding.ts";
import { addressOf, partsOfAddress, type Address } from "../model/record.ts";
import type { Milestone } from "../model/vocabulary.ts";
import { recordWords } from "../model/titles.ts";
import { placeWords } from "../model/words.ts";
import { isElsewhere, type Owner } from "../model/vocabulary.ts";
import { adoptable, sheetKind } from "../compute/adoption.ts";
import { nearest } from "../link/graph.ts";
import type { Gap } from "./absences.ts";
import { whatIs } from "../reading/absent-words.ts";
import { locate } from "../court/court.ts";
import { partsOf } from "./missing-parts.ts";
import type { Calendar } from "./milestones.ts";
import type { Absence, World } from "../reading/world.ts";
import { keyOf, missingKey, type FindingKey } from "../model/finding-key.ts";
import { finderOf, inBook, newFinding } from "../model/new-finding.ts";

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
export function gapKey(world: World, { absence }: Pick<Gap, "absence">): FindingKey {
  const { owner, name: what, target } = absence;
  if (target !== null) return missingKey(target);
  if (owner === null) return keyOf("missing", null, what);
  const { name } = locate(world, owner.record, owner.pointer);
  return keyOf("missing", owner.record, `${name === "" ? "" : `${name} `}${what}`);
}

/** Milestone at which a gap is owed first; "now" when nobody says. */
export function dueOf({ wants }: Gap, calendar: Calendar): Milestone {
  const dues = wants.flatMap(({ due }) => due ?? []);
  return dues.reduce((first, due) => (calendar.rank(due) < calendar.rank(first) ? due : first), dues[0] ?? "now");
}

/** Who asks first for what is missing: the register, a definition that is owed it, a field or link, else what waits for it. */
const askedBy = ({ wants }: Gap, due: Milestone) =>
  wants.find((want) => want.requirement !== undefined) ??
  wants.find((want) => want.reader !== undefined && want.due === due) ??
  wants.find((want) => want.reader !== undefined) ??
  wants.find((want) => want.by === null) ??
  wants[0];

/** What is missing as people read it, whether it is a finding or not due yet. */
export function missingOf(world: World, gap: Gap, due: Milestone, became: Absent): Omit<Missing, "absences"> {
  const { absence, wants } = gap;
  const asked = askedBy(gap, due);
  const figures = adoptable(world, absence);
  return {
    key: gapKey(world, gap),
    at: absence.owner,
    what: absence.target === null ? whatIs(world, absence) : targetWords(world, absence.target),
    kind: absence.kind,
    field: absence.kind === null && absence.lacks === undefined && /^\w+$/.test(absence.step) ? absence.step : null,
    step: `${absence.step}${absence.filters}`,
    target: absence.target,
    ...(absence.short !== undefined && {
      short: { found: absence.short.found.length, atLeast: absence.short.atLeast },
    }),
    message: messageOf(world, gap),
    owner: asked?.owner ?? "document control",
    due,
    basis: asked?.basis ?? owed,
    register: [...new Set(wants.flatMap((want) => want.requirement ?? []))],
    readers: [...new Set(wants.flatMap((want) => want.reader ?? []))],
    became,
    ...(figures !== undefined && { adoptable: figures }),
  };
}

/** A gap as people read it. */
export function gapFinding(world: World, gap: Gap, due: Milestone): Finding {
  const { absence } = gap;
  const asked = askedBy(gap, due);
  const at = absence.owner === null ? null : locate(world, absence.owner.record, absence.owner.pointer);
  const key = gapKey(world, gap);
  const owner = asked?.owner ?? "document control";
  const figures = absence.owner === null || absence.target !== null ? figuresIn(world, gap) : [];
  const found = [
    ...(absence.short?.found.map((record) => addressOf(record)) ?? []),
    ...(absence.lacks?.map((one) => gapKey(world, { absence: one })) ?? []),
  ];
  return newFinding(finderOf(gapRules, "missing"), at ?? { subject: null, place: inBook }, {
    key,
    verdict: "not judged",
    message: messageOf(world, gap),
    why: whyOf(gap, due),
    hint: asked?.hint ?? hintOf(world, absence, owner, figures.length > 0),
    basis: asked?.basis ?? owed,
    owner,
    due: due === "now" ? null : due,
    about: [key, ...found.sort()].join(" "),
    related: [...relatedOf(world, absence, at?.place), ...figures],
  });
}

/** "weld log WL-07" of `weld-log:WL-07`. */
function targetWords({ kinds }: World, target: Address): string {
  return recordWords(kinds, partsOfAddress(target));
}

function messageOf(world: World, { absence, wants }: Gap): string {
  const { owner, target, short } = absence;
  if (owner === null) {
    const named = wants.flatMap((want) => (want.absence.target === null ? [] : partsOfAddress(want.absence.target).id));
    const ids = [...new Set(named)].sort();
    const list = `${ids.slice(0, 6).join(", ")}${ids.length > 6 ? ` and ${ids.length - 6} more` : ""}`;
    return `the book holds no ${whatIs(world, absence)}${ids.length === 0 ? "" : `; links name ${list}`}`;
  }
  const { of } = placeWords(world.kinds, owner.record, owner.pointer);
  if (target !== null) {
    const by = placeWords(world.kinds, owner.record, "").of;
    return `${targetWords(world, target)} is named by ${by}, but is not in the book`;
  }
  if (absence.lacks !== undefined) return `${of} lacks ${whatIs(world, absence)}`;
  if (short === undefined) return `${of} has no ${whatIs(world, absence)}`;
  const holder = absence.step.startsWith("book.") ? "the book holds" : `${of} has`;
  return `${holder} ${short.found.length} ${whatIs(world, absence)}; at least ${short.atLeast} are owed`;
}

function whyOf({ absence, wants }: Gap, due: string): string {
  const rows = [...new Set(wants.flatMap((want) => want.requirement ?? []))];
  const named = absence.target === null ? "it is owed" : "a link names it";
  // What lacks is listed: a row of the register for each of it says nothing more.
  const shown = absence.lacks === undefined ? rows.length : 3;
  const more = rows.length > shown ? `; and ${rows.length - shown} more` : "";
  const read = readerWords(wants);
  const reason = rows.length > 0 ? `owed by the register: ${rows.slice(0, shown).join("; ")}${more}` : read || named;
  const limits = [...new Set(wants.flatMap((want) => want.why ?? []))];
  const reasons = [rows.length === 0 && limits.length > 0 ? "" : reason, limits.join(", ")].filter((one) => one !== "");
  return [...reasons, ...(due === "now" ? [] : [`due at milestone "${due}"`])].join("; ");
}

/** `"Wall of a shell" reads it, and 2 more`: which definitions are owed it. */
function readerWords(wants: Gap["wants"]): string {
  const [first, ...more] = new Set(wants.flatMap(({ reader }) => reader ?? []));
  if (first === undefined) return "";
  return `"${first}"${more.length === 0 ? " reads it" : ` and ${more.length} more read it`}`;
}

/** Who owes it, and what he has to do; who works elsewhere is asked for it. */
function hintOf(world: World, absence: Absence, owner: Owner, listed: boolean): string {
  const { target, kind } = absence;
  if (target !== null) {
    const near = nearest(world.graph, partsOfAddress(target));
    const said = near.map((one) => `"${one}"`).join(", ");
    const adopting = listed ? "; a sheet may adopt the recomputed figures by a signature for their digest" : "";
    return `${owner} to add the record, or to correct the link${near.length > 0 ? `; nearest: ${said}` : ""}${adopting}`;
  }
  const what = whatIs(world, absence);
  const figures = adoptable(world, absence);
  if (figures !== undefined)
    return `${owner} to add the ${what} from its original; or to look at the recomputed figures (${figures.said}), and to adopt them by a signature for ${figures.digest}`;
  if (absence.owner === null && kind === sheetKind)
    return `${owner} to add the ${what} from its original; or design to look at recomputed figures, where any are listed, and to adopt them by a signature for the digest of each`;
  if (isElsewhere(owner)) return `ask the ${owner} for the ${what}, and enter it from the original`;
  if (kind !== null) return `${owner} to add the ${what} from its original`;
  return `${owner} to enter it from the original; if there is none, to ask for it, or to record a waiver with its ground`;
}

/** Of a kind of which there is no record, or of one that links name: what may be adopted instead, each with the digest to sign for. */
function figuresIn(world: World, gap: Gap): Finding["related"] {
  return partsOf(world, [gap]).flatMap(({ at, adoptable: figures }) => {
    if (at === null || figures === undefined) return [];
    const { subject, place } = locate(world, at.record, at.pointer);
    return [{ subject, place, message: `${figures.of}: ${figures.said}; digest ${figures.digest}` }];
  });
}

/** All links that name an absent record. */
function relatedOf(world: World, { target }: Absence, at: Finding["place"] | undefined): Finding["related"] {
  const links = target === null ? [] : (world.graph.absent.get(target) ?? []);
  const named = links.flatMap((link) => {
    const { subject, place } = locate(world, link.from, link.pointer);
    if (place.file === at?.file && place.pointer === at.pointer) return [];
    return [
      [
        addressOf(link.from),
        { subject, place, message: `named by ${recordWords(world.kinds, link.from)} too` },
      ] as const,
    ];
  });
  return [...new Map(named).values()].slice(0, 20);
}

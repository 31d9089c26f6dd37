import type { Finding } from "../model/finding.ts";
import type { Link, LinkTarget } from "../model/graph.ts";
import { isList } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { findRow, rowName } from "../model/stable.ts";
import { kindWords } from "../model/titles.ts";
import { thePlace } from "../model/words.ts";
import { foldAlike } from "./alike.ts";
import { faultAt, type Fault } from "./faults.ts";
import type { AimedLink } from "./aimed-links.ts";
import { kindText } from "../model/kind-text.ts";
import { aboutPlace } from "../model/finding-key.ts";
import { ambiguousRow } from "./duplicates.ts";

/** What links may lead to. */
export interface Targets {
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly byKind: ReadonlyMap<string, ReadonlyMap<string, BookRecord>>;
  /** By kind: the id for each folded form. */
  readonly folded: ReadonlyMap<string, ReadonlyMap<string, string>>;
}

/** Takes what is wrong with links: faults, and links to a row whose name several rows bear. */
export interface Objector {
  fault(finding: Finding): void;
  /** Such a link is explained by its target's own fault; `row` is the list's address, `#` and the name. */
  ambiguous(row: string, link: Address): void;
}

/** Where one written link leads. What is wrong with it is handed to `object`. */
export function followLink(
  record: BookRecord,
  kind: Kind,
  written: AimedLink,
  { kinds, byKind, folded }: Targets,
  object: Objector,
): Link {
  const { pointer, path, text, target } = written;
  const broken = (fault: Omit<Fault, "accuses">): Link => {
    object.fault(faultAt(record, kind, pointer, { ...fault, accuses: [addressOf(record, pointer)] }));
    return { from: record, pointer, path, text, target: null, state: "broken" };
  };
  const allowed = written.field.targets ?? [];
  const name = () => thePlace(kinds, record, pointer);
  const targetKind = "expected" in target ? "" : kindWords(kinds, target.kind);
  if ("expected" in target)
    return broken({
      rule: "link-form",
      message: `${name()} is "${text}"; expected ${target.expected}`,
      why: "a link is an id as the record it names bears it",
      hint: "write the id exactly as it stands in the record",
    });
  const to = byKind.get(target.kind)?.get(target.id);
  if (to === undefined) {
    const alike = folded.get(target.kind)?.get(foldAlike(target.id));
    if (alike === undefined) return { from: record, pointer, path, text, target, state: "absent" };
    return broken({
      rule: "link-exact",
      message: `${name()} names ${targetKind} "${target.id}", which is not in the book; "${alike}" differs only by case, hyphen, zeros or look-alike signs`,
      why: `the book holds ${targetKind} "${alike}"`,
      hint: `compare with the stamp or the certificate; then correct the link, or add the record "${target.id}" if it is another one`,
    });
  }
  const inner = innerOf(target, to, allowed, kinds);
  if (inner.pointer !== undefined)
    return {
      from: record,
      pointer,
      path,
      text,
      target: target.row === undefined && target.revision === undefined ? wholeOf(to) : target,
      state: "found",
      to,
      toPointer: inner.pointer,
    };
  if (inner.several) {
    object.ambiguous(
      ambiguousRow(addressOf(to, `/${inner.list}`), target.row ?? target.revision ?? ""),
      addressOf(record, pointer),
    );
    return { from: record, pointer, path, text, target: null, state: "broken" };
  }
  const named = `${name()} names row "${target.row ?? ""}" of ${targetKind} ${target.id}`;
  if (inner.among.length > 1)
    return broken({
      rule: "link-row",
      message: `${named}, which several of its lists have`,
      why: `it stands in ${inner.among.join(" and ")}`,
      hint: "give the rows names of their own",
    });
  const row = target.row === undefined ? `revision ${target.revision ?? ""}` : `row "${target.row}"`;
  return broken({
    rule: "link-row",
    about: aboutPlace(to, target.row ?? target.revision ?? ""),
    message: `${name()} names ${row} of ${targetKind} ${target.id}, which has none such`,
    why: `${targetKind} ${target.id} has ${inner.names.length === 0 ? "no rows" : inner.names.join(", ")}`,
    hint: "correct the link, or the record it names",
  });
}

const wholes = new WeakMap<BookRecord, LinkTarget>();

/** A record as a target: one for all the links that lead to it, of which some records have thousands. */
function wholeOf(record: BookRecord): LinkTarget {
  let target = wholes.get(record);
  if (target === undefined) wholes.set(record, (target = { kind: record.kind, id: record.id }));
  return target;
}

interface Inner {
  /** Undefined when no row, or more than one, bears the name. */
  readonly pointer: string | undefined;
  readonly several: boolean;
  readonly list: string;
  readonly names: readonly string[];
  /** Lists that have a row of the name, when there are several. */
  readonly among: readonly string[];
}

const whole: Inner = { pointer: "", several: false, list: "", names: [], among: [] };

/** The object a target names inside its record: the record itself, or a row of a list its field allows. */
function innerOf(target: LinkTarget, to: BookRecord, allowed: readonly string[], kinds: Targets["kinds"]): Inner {
  const none = { pointer: undefined, several: false, list: "", names: [], among: [] };
  const name = target.row ?? target.revision;
  if (name === undefined) return whole;
  const found = allowed.flatMap((text) => {
    const { kind, list } = kindText(text);
    const field = kind === target.kind ? kinds.get(kind)?.fields.get(list) : undefined;
    return field === undefined ? [] : [{ list, field, pointer: findRow(to.value, list, field, name) }];
  });
  const [hit, ...more] = found.filter(({ pointer }) => pointer !== undefined);
  if (more.length > 0) return { ...none, among: [hit, ...more].map((one) => one?.list ?? "") };
  if (hit?.pointer === "several") return { ...none, several: true, list: hit.list };
  if (hit !== undefined) return { pointer: hit.pointer, several: false, list: hit.list, names: [], among: [] };
  const names = found.flatMap(({ list, field }) => {
    const rows = to.value[list];
    return isList(rows) ? rows.map((row, index) => rowName(field, row) ?? `row ${index + 1}`) : [];
  });
  return { ...none, names: names.slice(0, 20) };
}

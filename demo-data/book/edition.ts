import type { Edition, Kind, RecordFile } from "./records.ts";

type Fields = Readonly<Record<string, unknown>>;

/** The day a record comes into being, by kind; a kind that is not here is there from the order on. */
const dayOf: Readonly<Partial<Record<Kind, (fields: Fields) => unknown>>> = {
  "body-certificate": ({ date }) => date,
  "calculation-sheet": ({ date }) => date,
  declaration: ({ date }) => date,
  "coating-report": ({ date }) => date,
  "dimension-check": ({ date }) => date,
  "ndt-report": ({ date }) => date,
  nameplate: ({ fixed }) => fixed,
  "nonconformity-report": ({ raised }) => raised,
  "pressure-test": ({ date }) => date,
  "production-test": ({ date }) => date,
  repair: ({ date }) => date,
  "safety-valve": ({ certificate }) => fieldsOf(certificate)["date"],
  "weld-log": ({ fitUp }) => fieldsOf(fitUp)["date"],
  document: ({ revisions }) => fieldsOf(Array.isArray(revisions) ? revisions[0] : undefined)["date"],
};

function fieldsOf(value: unknown): Fields {
  return typeof value === "object" && value !== null ? Object.fromEntries(Object.entries(value)) : {};
}

const early = (day: unknown, cutOff: string) => typeof day !== "string" || day.slice(0, 10) <= cutOff;

/** What an inspection step shows before it is done: the plan alone. */
function planned(step: Fields): Fields {
  const { done: _done, notice, points, ...rest } = step;
  const bare = (Array.isArray(points) ? points : []).map((point: unknown) => {
    const { party, point: what } = fieldsOf(point);
    return { party, point: what };
  });
  return { ...rest, points: bare, ...(notice !== undefined && { notice }) };
}

function trimmed(kind: Kind, record: Fields, cutOff: string): Fields {
  if (kind === "inspection-step" && !early(record["done"], cutOff)) {
    const { notice, ...rest } = planned(record);
    return early(notice, cutOff) && notice !== undefined ? { ...rest, notice } : rest;
  }
  if (kind === "drawing") {
    const { revisions, ...rest } = record;
    const open = (Array.isArray(revisions) ? revisions : []).map((revision: unknown) => {
      const fields = fieldsOf(revision);
      return fields["status"] === "as-built" ? { ...fields, status: "for-construction" } : fields;
    });
    return { ...rest, revisions: open };
  }
  return record;
}

/** The records there are at the end of a day: later ones left out, plans not yet carried out left open. */
export function upTo({ cutOff }: Edition, files: readonly RecordFile[], final: boolean): readonly RecordFile[] {
  if (final) return files;
  return files.flatMap((file) => {
    const records = file.records
      .filter((record) => early(dayOf[file.kind]?.(fieldsOf(record)), cutOff))
      .map((record) => trimmed(file.kind, fieldsOf(record), cutOff));
    return records.length === 0 ? [] : [{ ...file, records }];
  });
}

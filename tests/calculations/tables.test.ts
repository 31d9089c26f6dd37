import { describe, expect, it } from "vitest";
import { cellProblem } from "../../src/model/table-cells.ts";
import { anyOther, inInterval, overlap, type Interval, type Table, type TableRow } from "../../src/model/table.ts";
import { knownUnit } from "../../src/model/units.ts";
import { shippedTables } from "../../src/definitions.ts";

const tables = shippedTables();

const intervalOf = (row: TableRow, key: string): Interval => {
  const value = row.keys[key];
  if (value === undefined || typeof value === "string") throw new Error(`${key} is no interval`);
  return value;
};

/** The row for these keys; an interval key is given as a number in its unit. */
function find(table: Table, keys: Readonly<Record<string, string | number>>): readonly TableRow[] {
  return table.rows.filter((row) =>
    table.keys.every(({ name, match }) => {
      const wanted = keys[name];
      return match === "equal"
        ? row.keys[name] === wanted
        : typeof wanted === "number" && inInterval(wanted, intervalOf(row, name));
    }),
  );
}

type Value = TableRow["values"][string];

/** The points of a list value; fails for a text. */
function pointsOf(value: Value | undefined): readonly Readonly<Record<string, string>>[] {
  if (value === undefined || typeof value === "string") throw new Error("the value is no list of points");
  return value.filter((point) => typeof point !== "string");
}

/** A text value; fails for a list. */
function textOf(value: Value | Interval | undefined): string {
  if (typeof value !== "string") throw new Error("the value is no text");
  return value;
}

const table = (id: string): Table => {
  const found = tables.find((one) => one.id === id);
  if (found === undefined) throw new Error(`there is no table ${id}`);
  return found;
};

describe.each(tables.map((one) => [one.id, one] as const))("table %s", (_, one) => {
  it("has every key in every row, in the declared form", () => {
    for (const row of one.rows) {
      expect(Object.keys(row.keys).sort()).toEqual(one.keys.map(({ name }) => name).sort());
      for (const { name, match } of one.keys)
        if (row.keys[name] !== anyOther) expect(typeof row.keys[name]).toBe(match === "equal" ? "string" : "object");
    }
  });

  it("has every column in every row, in units that there are", () => {
    for (const row of one.rows) {
      expect(Object.keys(one.columns)).toEqual(expect.arrayContaining(Object.keys(row.values)));
      for (const [name, { unit, points, list, optional }] of Object.entries(one.columns)) {
        const value = row.values[name];
        if (value === undefined && optional === true) continue;
        if (points !== undefined) {
          for (const point of pointsOf(value)) expect(Object.keys(point).sort()).toEqual([...points].sort());
        } else if (unit !== undefined) {
          knownUnit(unit);
          expect(cellProblem(textOf(value), unit, one.keys), `${name}: ${textOf(value)}`).toBeUndefined();
        } else if (list === true) expect(value).toBeInstanceOf(Array);
        else expect(value).toBeTypeOf("string");
      }
    }
  });

  it("never has two rows for the same keys", () => {
    const same = one.keys.filter(({ match }) => match === "equal").map(({ name }) => name);
    const ranges = one.keys.filter(({ match }) => match === "interval").map(({ name }) => name);
    const seen = new Map<string, TableRow[]>();
    for (const row of one.rows) {
      const key = same.map((name) => textOf(row.keys[name])).join("|");
      for (const other of seen.get(key) ?? [])
        expect(
          ranges.some((name) => apart(row.keys[name], other.keys[name])),
          key,
        ).toBe(true);
      seen.set(key, [...(seen.get(key) ?? []), row]);
    }
  });
});

/** Whether two keys of these tables have no value in common. */
function apart(a: TableRow["keys"][string] | undefined, b: TableRow["keys"][string] | undefined): boolean {
  if (typeof a !== "object" || typeof b !== "object") return a !== b;
  return !overlap(a, b);
}

describe("steel grades", () => {
  const plate = { standard: "EN 10028-2", edition: "2017", grade: "P265GH" };

  it("change strength just above the end of a thickness band", () => {
    const at = (thickness: number) =>
      find(table("grade-strength"), { ...plate, thickness })[0]?.values["yieldStrength"];
    expect(at(16)).toBe("265 MPa");
    expect(at(16.01)).toBe("255 MPa");
    expect(at(250)).toBe("185 MPa");
    expect(at(250.01)).toBeUndefined();
    expect(at(0)).toBeUndefined();
  });

  it("have no row for another edition", () => {
    expect(find(table("grade-strength"), { ...plate, edition: "2003", thickness: 10 })).toEqual([]);
  });

  it("have proof strengths that fall with temperature and start below the yield strength", () => {
    for (const row of table("grade-proof-strength").rows) {
      const points = pointsOf(row.values["points"]);
      const [temperatures, strengths] = ["temperature", "proofStrength"].map((name) =>
        points.map((point) => Number.parseFloat(point[name] ?? "")),
      );
      expect(temperatures).toEqual(temperatures?.toSorted((a, b) => a - b));
      expect(strengths).toEqual(strengths?.toSorted((a, b) => b - a));
      const { upTo } = intervalOf(row, "thickness");
      const [cold] = find(table("grade-strength"), { ...textKeys(row), thickness: upTo ?? 0 });
      expect(Number.parseFloat(textOf(cold?.values["yieldStrength"])), JSON.stringify(row.keys)).toBeGreaterThanOrEqual(
        strengths?.[0] ?? Infinity,
      );
    }
  });

  it("have a least tensile strength below the greatest, and above the yield strength", () => {
    for (const { values, keys } of table("grade-strength").rows) {
      const [low, high, yieldStrength] = ["tensileStrength", "tensileStrengthMost", "yieldStrength"].map((name) =>
        Number.parseFloat(textOf(values[name])),
      );
      expect(low, JSON.stringify(keys)).toBeLessThan(high ?? 0);
      expect(yieldStrength, JSON.stringify(keys)).toBeLessThan(low ?? 0);
    }
  });

  it("have proof strengths at temperature for plates, tubes and bars, none for forgings", () => {
    const standards = new Set(table("grade-proof-strength").rows.map(({ keys }) => keys["standard"]));
    expect([...standards].sort()).toEqual(["EN 10028-2", "EN 10216-2", "EN 10217-2", "EN 10273"]);
  });

  it("limit carbon, phosphorus and sulphur in every grade, each limit once", () => {
    for (const { values, keys } of table("grade-chemistry").rows) {
      const names = pointsOf(values["limits"]).map((limit) => `${limit["element"] ?? ""} ${limit["bound"] ?? ""}`);
      expect(new Set(names).size, JSON.stringify(keys)).toBe(names.length);
      expect(names).toEqual(expect.arrayContaining(["C most", "P most", "S most"]));
    }
  });
});

const textKeys = (row: TableRow) =>
  Object.fromEntries(
    Object.entries(row.keys).filter((entry): entry is [string, string] => typeof entry[1] === "string"),
  );

describe("arc efficiency", () => {
  it("is known for a process, and not for another", () => {
    expect(find(table("arc-efficiency"), { process: "135" })[0]?.values["efficiency"]).toBe("0.8");
    expect(find(table("arc-efficiency"), { process: "311" })).toEqual([]);
  });
});

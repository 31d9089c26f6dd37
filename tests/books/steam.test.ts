import { describe, expect, test } from "vitest";
import type { Computed } from "../../src/model/book.ts";
import type { Change } from "../support/changes.ts";
import { demoBook, judgeChanged } from "../support/demo-book.ts";
import { equipment, set, steam } from "../support/steam-receiver.ts";

const judge = (changes: readonly Change[]) => {
  const { judged } = judgeChanged(demoBook, changes);
  if (judged === null) throw new Error("the book could not be read");
  return judged;
};
const judged = judge(steam);
const results = ({ computed }: { readonly computed: readonly Computed[] }, id: string, subject: string) =>
  new Map(
    computed
      .filter((one) => one.state === "done")
      .filter((one) => one.calculation.id === id && one.subject.id === subject)
      .flatMap(({ steps }) => steps.map(({ step, value }) => [step.symbol, value] as const)),
  );

describe("records of equipment for steam", () => {
  // Values of the same equations in another program.
  test("give saturation, heat balance, valve and relief", () => {
    expect(results(judged, "saturation", "TQ423-01").get("ts")).toBeCloseTo(188.01357, 5);
    expect(results(judged, "heat-balance", "TQ423-01").get("Φ")).toBeCloseTo(781.98889, 4);
    expect(results(judged, "heat-balance", "TQ423-01").get("Dmax")).toBeCloseTo(1248.1249, 3);
    expect(results(judged, "steam-safety-valve", "SV-01").get("Qm")).toBeCloseTo(1489.256, 2);
    expect(Object.fromEntries(results(judged, "steam-relief", "TQ423-01"))).toMatchObject({ Qs: 1485, Qn: 1400 });
  });

  test("heat the parts, and the design stress takes the highest temperature", () => {
    const temperature = (part: string, id = "metal-temperature") => results(judged, id, part).get("t");
    expect(temperature("P01")).toBeCloseTo(188.01357 + 2 * 8 + 15, 5);
    expect(temperature("P02")).toBe(250);
    expect(temperature("P03")).toBeCloseTo(188.01357, 5);
    expect(temperature("P01", "design-stress")).toBeCloseTo(219.01357, 5);
    expect(temperature("P02", "design-stress")).toBe(250);
    expect(temperature("P03", "design-stress")).toBe(190);
  });

  test("owe the way of heating of a part", () => {
    const { findings } = judge([...steam, { remove: "part:P01", at: "/heating" }]);
    const about = findings.filter(({ subject, message }) => subject?.id === "P01" && message.includes("heating"));
    expect(about.map(({ severity }) => severity)).toEqual(["gap"]);
  });

  test("accuse a temperature below saturation, and valves too small", () => {
    const of = (rule: string, changes: readonly Change[]) =>
      judge([...steam, ...changes]).findings.filter((finding) => finding.rule === rule);
    for (const id of ["saturation", "heat-balance", "steam-safety-valve", "steam-relief", "metal-temperature"])
      expect(of(id, []), id).toEqual([]);
    const [small] = of("steam-relief", [set(equipment, "/requiredFlow", "1486 kg/h")]);
    expect(small?.severity).toBe("nonconformity");
    expect(small?.message).toBe(
      "equipment TQ423-01: the capacity of all valves is 1485 kg/h, below the flow to be relieved, 1486 kg/h",
    );
    const colder = steam.map((change) => JSON.parse(JSON.stringify(change).replaceAll("190 °C", "187 °C")) as Change);
    const found = judge(colder).findings.filter(({ rule }) => rule === "saturation");
    expect(found.map(({ message }) => message)).toEqual([
      "equipment TQ423-01: the maximum allowable temperature TS is 187 °C, below the saturation temperature of 188 °C",
    ]);
  });
});

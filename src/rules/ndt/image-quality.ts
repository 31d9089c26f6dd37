import { fromMemory } from "../../model/basis.ts";
import { list, optional, quantity, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { arrangements, lineFor, wireNames, wireNumber, wirePoint, type WireLines } from "../../model/wires.ts";
import { owedBy } from "../../model/owes.ts";

const { singleSource, singleFilm, doubleSingle, doubleFilm, doubleSource } = arrangements;
const made = "record.radiography.techniqueClass";
const asked = (symbol: string) => optional(text(`joint.calculation(image-quality).${symbol}`));

/** What one table asks for, by the class that is asked for and by the class that the report states. */
interface Need {
  readonly ways: readonly string[];
  readonly asked: string | undefined;
  readonly lines: WireLines;
  readonly walls: 1 | 2;
}

/** Number of the wire by the better of both classes: films are what their report says, and what the joint needs. */
function numberOf({ asked, lines, walls }: Need, thickness: number): number {
  const stated = wireNumber(lineFor(lines, walls * thickness)?.wire ?? "") ?? 0;
  return Math.max(stated, wireNumber(asked ?? "") ?? 0);
}

export const wireSeen = rule({
  id: "wire-seen",
  title: "A radiograph shows the wire of its image quality indicator that its thickness and class ask for",
  basis: fromMemory("EN ISO 17636-1", undefined, "annex B, least image quality by wires of ISO 19232-1"),
  kind: "ndt-report#rows",
  when: [{ path: "record.method", equals: "RT" }],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    wire: text("wire"),
    way: optional(text("record.radiography.arrangement")),
    made: text(made),
    thicknesses: list(quantity("joint.thicknesses[]", "mm")),
    single: things(`table(image-quality-single-wall, ${made}).points[]`, wirePoint),
    film: things(`table(image-quality-double-wall-film, ${made}).points[]`, wirePoint),
    source: things(`table(image-quality-double-wall-source, ${made}).points[]`, wirePoint),
    askedSingle: asked("Ws"),
    askedFilm: asked("Wf"),
    askedSource: asked("Wd"),
  },
  owes: [owedBy("testing", "testing-complete", "wire")],
  *check(values, row) {
    const { wire, way, made } = values;
    const seen = wireNumber(wire);
    const [thinner] = values.thicknesses.toSorted((one, other) => one.value - other.value);
    if (thinner === undefined) return;
    if (seen === undefined) {
      yield {
        at: "wire",
        name: "form",
        message: `${row.name} states "${wire}" as the thinnest wire seen, which names no wire of ISO 19232-1`,
        why: `the wires are ${wireNames[1] ?? ""} to ${wireNames.at(-1) ?? ""}`,
        hint: "write the wire as wires are named, such as W14, if the report says which it was",
        unsure: true,
      };
      return;
    }
    const needs: readonly Need[] = [
      { ways: [singleSource], asked: values.askedSingle, lines: values.single, walls: 1 },
      { ways: [doubleSingle, doubleFilm], asked: values.askedFilm, lines: values.film, walls: 2 },
      { ways: [doubleSource], asked: values.askedSource, lines: values.source, walls: 2 },
    ];
    const wanted = needs
      .filter(({ ways }) => way === undefined || ways.includes(way))
      .map((need) => numberOf(need, thinner.value));
    const shown = `${row.name} shows wire W${seen}`;
    if (wanted.length === 0 || wanted.includes(0))
      yield {
        at: "wire",
        name: "no table",
        message: `${shown}; no table says which wire ${thinner.text} asks for, ${way ?? "however exposed"}`,
        why: "with the indicator on the film side of a single wall a comparison exposure shows what is asked",
        hint: "answer this query with the comparison exposure, or correct how the films were exposed",
        unsure: true,
      };
    else if (seen < Math.max(...wanted)) {
      const [least, most] = [Math.min(...wanted), Math.max(...wanted)];
      const open = seen >= least;
      yield {
        at: "wire",
        message: open
          ? `${shown}; ${thinner.text} asks for W${least} to W${most}, by how the film was exposed, which the report does not say`
          : `${shown}; ${thinner.text} asks for W${least} or a thinner wire`,
        why: `class ${made}, ${way ?? "even in the arrangement that asks for the thickest wire"}`,
        hint: open
          ? "state in the report how the films were exposed and on which side the indicator stood"
          : "compare with the film; if it is true, have it made again, or raise a nonconformity report and have it decided",
        unsure: open,
      };
    }
  },
  examples: [
    { name: "just the wire", given: film("W15"), objections: [] },
    { name: "a thinner wire", given: film("W16"), objections: [] },
    {
      name: "a thicker wire",
      given: film("W14"),
      objections: ["X-01 shows wire W14; 8.0 mm asks for W15 or a thinner wire"],
    },
    {
      name: "a thicker wire, of the thinner of two parts",
      given: film("W14", { thicknesses: ["10.0 mm", "8.0 mm"] }),
      objections: ["X-01 shows wire W14; 8.0 mm asks for W15 or a thinner wire"],
    },
    {
      name: "above the end of the line",
      given: film("W14", { thicknesses: ["8.1 mm"], askedSingle: "W14" }),
      objections: [],
    },
    { name: "through two walls", given: film("W14", { way: doubleSingle }), objections: [] },
    {
      name: "a thicker wire, through two walls",
      given: film("W13", { way: doubleFilm }),
      objections: ["X-01 shows wire W13; 8.0 mm asks for W14 or a thinner wire"],
    },
    { name: "indicator on the source side of two walls", given: film("W13", { way: doubleSource }), objections: [] },
    {
      name: "indicator on the film side of a single wall",
      given: film("W16", { way: singleFilm }),
      objections: [
        "X-01 shows wire W16; no table says which wire 8.0 mm asks for, single wall, indicator on film side",
      ],
    },
    { name: "enough however it was exposed", given: film("W15", { way: null }), objections: [] },
    {
      name: "enough for one exposure, not for another",
      given: film("W14", { way: null }),
      objections: [
        "X-01 shows wire W14; 8.0 mm asks for W13 to W15, by how the film was exposed, which the report does not say",
      ],
    },
    {
      name: "too thick however it was exposed",
      given: film("W12", { way: null }),
      objections: ["X-01 shows wire W12; 8.0 mm asks for W13 or a thinner wire"],
    },
    {
      name: "the class that is asked for is the better one",
      given: film("W15", { askedSingle: "W16" }),
      objections: ["X-01 shows wire W15; 8.0 mm asks for W16 or a thinner wire"],
    },
    {
      name: "the class that is asked for is the lesser one",
      given: film("W14", { askedSingle: "W13" }),
      objections: ["X-01 shows wire W14; 8.0 mm asks for W15 or a thinner wire"],
    },
    {
      name: "no wire",
      given: film("10 FE EN"),
      objections: ['X-01 states "10 FE EN" as the thinnest wire seen, which names no wire of ISO 19232-1'],
    },
  ],
});

interface Changes {
  /** Null: not stated. */
  readonly way?: string | null;
  readonly thicknesses?: readonly string[];
  readonly askedSingle?: string;
}

function film(wire: string, { way = singleSource, thicknesses = ["8.0 mm"], askedSingle = "W15" }: Changes = {}) {
  return {
    wire,
    ...(way !== null && { way }),
    made: "B",
    thicknesses,
    // Of class B, as the tables have them.
    single: [line(4, 16), line(6, 15), line(8, 14)],
    film: [line(6, 15), line(12, 14), line(18, 13)],
    source: [line(8, 14), line(15, 13), line(25, 12)],
    askedSingle,
  };
}

function line(over: number, number: number) {
  return { over: `${over} mm`, wire: `W${number}` };
}

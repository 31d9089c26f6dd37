import { excerptSeen, ownChoice } from "../../model/basis.ts";
import { anyOf, count, list, optional, quantity, text, things } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const hint = "compare with the report; if it says so, raise a nonconformity report and have the coat judged";
const guard = 1e-9;

export const coatingFilm = rule({
  id: "coating-film",
  title: "Every reading of a coat lies within what its procedure permits, and there are as many as it asks for",
  basis: ownChoice("what the procedure asks for and what was read stand in one report"),
  kind: "coating-report#zones",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    zone: text("zone"),
    readings: list(quantity("readings[]", "µm")),
    least: quantity("record.minimum", "µm"),
    greatest: quantity("record.maximum", "µm"),
    asked: optional(count("record.readingsAsked")),
  },
  *check({ zone, readings, least, greatest, asked }) {
    const range = `${least.text} to ${greatest.text} is permitted`;
    const outside = readings.filter(({ value }) => value < least.value - guard || value > greatest.value + guard);
    const [first] = outside;
    if (first !== undefined)
      yield {
        at: "readings",
        name: "range",
        message: `the coat of ${zone} measures ${first.text}; ${range}`,
        why: outside.length === 1 ? "one reading outside" : `${outside.length} of ${readings.length} readings outside`,
        hint,
      };
    if (asked !== undefined && readings.length < asked)
      yield {
        at: "readings",
        accuses: [],
        name: "number",
        message: `the coat of ${zone} has ${readings.length === 1 ? "1 reading" : `${readings.length} readings`}; the procedure asks for ${asked}`,
        why: `read: ${readings.map(({ text: one }) => one).join(", ")}`,
        hint: "add the readings that are missing, or measure again",
      };
  },
  examples: [
    { name: "on both limits", given: film("200 µm", "300 µm", "400 µm"), objections: [] },
    {
      name: "thin",
      given: film("199 µm", "300 µm", "300 µm"),
      objections: ["the coat of course 1 measures 199 µm; 200 µm to 400 µm is permitted"],
    },
    {
      name: "thick, and too few",
      given: film("401 µm", "300 µm"),
      objections: [
        "the coat of course 1 measures 401 µm; 200 µm to 400 µm is permitted",
        "the coat of course 1 has 2 readings; the procedure asks for 3",
      ],
    },
  ],
});

function film(...readings: readonly string[]) {
  return { zone: "course 1", readings, least: "200 µm", greatest: "400 µm", asked: 3 };
}

const mean = (values: readonly Measure[]) => values.reduce((sum, { value }) => sum + value, 0) / values.length;

export const coatingFigures = rule({
  id: "coating-figures",
  title: "Least, mean and greatest reading of a coat are those of its readings",
  basis: ownChoice("a figure that follows from others is the one that follows"),
  kind: "coating-report#zones",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    zone: text("zone"),
    readings: list(quantity("readings[]", "µm")),
    least: optional(quantity("least", "µm")),
    mean: optional(quantity("mean", "µm")),
    greatest: optional(quantity("greatest", "µm")),
  },
  *check({ zone, readings, ...stated }) {
    const values = readings.map(({ value }) => value);
    const figures = [
      ["least", "least reading", Math.min(...values)],
      ["mean", "mean", mean(readings)],
      ["greatest", "greatest reading", Math.max(...values)],
    ] as const;
    const wrong = figures.flatMap(([at, what, value]) => {
      const one = stated[at];
      return one === undefined || Math.abs(one.value - value) <= one.halfUnit + guard
        ? []
        : [{ at, said: `${what} ${one.text}, which is ${Number(value.toFixed(1))} µm` }];
    });
    const [first] = wrong;
    if (first !== undefined)
      yield {
        at: first.at,
        accuses: wrong.map(({ at }) => at),
        message: `the report states of ${zone}: ${wrong.map(({ said }) => said).join("; ")}`,
        why: `read: ${readings.map(({ text: one }) => one).join(", ")}`,
        hint: "compare the readings and the figures with the report",
      };
  },
  examples: [
    {
      name: "as read, rounded",
      given: { ...read("200 µm", "300 µm", "401 µm"), least: "200 µm", mean: "300 µm", greatest: "401 µm" },
      objections: [],
    },
    {
      name: "a reading changed",
      given: { ...read("200 µm", "300 µm", "410 µm"), least: "200 µm", mean: "300 µm", greatest: "401 µm" },
      objections: [
        "the report states of course 1: mean 300 µm, which is 303.3 µm; greatest reading 401 µm, which is 410 µm",
      ],
    },
    { name: "nothing stated", given: read("200 µm"), objections: [] },
  ],
});

function read(...readings: readonly string[]) {
  return { zone: "course 1", readings };
}

/** Shares of ISO 19840. */
const [leastShare, fewShare] = [0.8, 0.2];

export const coatingNominal = rule({
  id: "coating-nominal",
  title:
    "The mean of each zone of a coat reaches its nominal thickness; no reading is below 80 % of it, and less than a fifth of them below it",
  basis: excerptSeen("ISO 19840", "acceptance of the dry film, as a summary of its criteria says", "2004"),
  kind: "coating-report",
  when: [{ path: "nominal", exists: true }],
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    nominal: quantity("nominal", "µm"),
    permitted: optional(quantity("minimum", "µm")),
    zones: anyOf(things("zones[]", { zone: text("zone"), readings: anyOf(list(quantity("readings[]", "µm"))) })),
  },
  *check({ nominal, permitted, zones }, report) {
    const all = zones.flatMap(({ readings }) => readings);
    if (all.length === 0) return;
    const thin = all.filter(({ value }) => value < nominal.value - guard);
    const least = Math.min(...all.map(({ value }) => value));
    // What is below the permitted minimum is said of its zone.
    const said = permitted !== undefined && least < permitted.value - guard;
    const wrong = [
      ...(permitted !== undefined && permitted.value < leastShare * nominal.value - guard
        ? [`the least permitted is ${permitted.text}, below 80 %`]
        : []),
      ...zones
        .filter(({ readings }) => readings.length > 0 && mean(readings) < nominal.value - guard)
        .map(({ zone, readings }) => `the mean of ${zone} is ${mean(readings).toFixed(1)} µm`),
      ...(least < leastShare * nominal.value - guard && !said
        ? [`one reading is ${Number(least.toFixed(1))} µm, below 80 %`]
        : []),
      ...(thin.length >= fewShare * all.length && thin.length > 0
        ? [`${thin.length} of ${all.length} readings are below it`]
        : []),
    ];
    if (wrong.length > 0)
      yield {
        at: "nominal",
        accuses: [],
        message: `the nominal thickness of coat ${report.name} is ${nominal.text}: ${wrong.join(", ")}`,
        why: `${all.length} readings in ${zones.length === 1 ? "1 zone" : `${zones.length} zones`}`,
        hint,
      };
  },
  examples: [
    { name: "one of six a little thin", given: system(248, 252, 260, 255, 251, 270), objections: [] },
    { name: "as thick as nominal", given: system(250), objections: [] },
    {
      name: "a limit below 80 %",
      given: { ...system(250), permitted: "20 µm" },
      objections: ["the nominal thickness of coat X-01 is 250 µm: the least permitted is 20 µm, below 80 %"],
    },
    { name: "nothing read", given: { nominal: "250 µm", zones: [] }, objections: [] },
    {
      name: "thin all over",
      given: system(199, 249, 250),
      objections: [
        "the nominal thickness of coat X-01 is 250 µm: the mean of end 1 is 232.7 µm, one reading is 199 µm, below 80 %, 2 of 3 readings are below it",
      ],
    },
    {
      name: "a fifth of them below it",
      given: system(249, 260, 260, 260, 260),
      objections: ["the nominal thickness of coat X-01 is 250 µm: 1 of 5 readings are below it"],
    },
  ],
});

function system(...readings: readonly number[]) {
  return { nominal: "250 µm", zones: [{ zone: "end 1", readings: readings.map((one) => `${one} µm`) }] };
}

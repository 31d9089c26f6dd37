import { fromMemory } from "../../model/basis.ts";
import { artefact, familiesOf, isoName, unnamed } from "../../model/imperfections.ts";
import {
  anyOf,
  list,
  optional,
  quantity,
  table,
  text,
  thing,
  things,
  type Row,
  type Values,
} from "../../model/input.ts";
import { atMost, exactly, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { indicationExamples } from "./indication-examples.ts";

const indication = {
  type: text("type"),
  length: optional(quantity("length", "mm")),
  size: optional(quantity("size", "mm")),
  echo: optional(quantity("echo", "dB")),
  verdict: optional(text("verdict")),
};

const inputs = {
  result: text("result"),
  report: thing("record", { standard: text("acceptance.standard"), level: text("acceptance.level") }),
  joint: thing("joint", {
    type: text("type"),
    thicknesses: list(quantity("thicknesses[]", "mm")),
    throat: optional(quantity("throat", "mm")),
  }),
  indications: anyOf(things("indications[]", indication)),
  limits: table("imperfection-limits"),
  echoes: table("ultrasonic-limits"),
} as const;
type Given = Values<typeof inputs>;
type Found = Given["indications"][number];

interface Fault {
  readonly at: "type" | "length" | "size" | "echo";
  readonly said: string;
  readonly unsure: boolean;
}

const surface = ["ISO 23277", "ISO 23278"];
/** Acceptance levels of ultrasonic testing, by echo and length. */
const echoed = "ISO 11666";

/** What a limit of two figures says of one: nothing where it has none, a question where the figure is not stated. */
function overLimit(at: "length" | "size", value: Measure | undefined, most: Measure | undefined): Fault | undefined {
  if (most === undefined) return undefined;
  const name = at === "length" ? "length" : "size";
  if (value === undefined)
    return { at: "type", said: `states no ${name}; ${most.text} is the most permitted`, unsure: true };
  const answer = atMost(value, most);
  if (answer === "yes") return undefined;
  return {
    at,
    said: `has a ${name} of ${value.text}; ${most.text} is the most permitted`,
    unsure: answer === "unsure",
  };
}

/** Of a round flaw that is three times longer than wide the rows of linear ones count. */
function asShaped(family: string, { length, size }: Found, standard: string): string {
  const round = family === "non-linear" || family === "gas pore";
  return surface.includes(standard) &&
    round &&
    length !== undefined &&
    size !== undefined &&
    length.value > 3 * size.value
    ? "linear"
    : family;
}

/** Why what was accepted may not be: the worst of what its names and figures say. */
function faultOf(found: Found, { report, joint, limits, echoes }: Given): Fault | undefined {
  const standard = isoName(report.standard);
  const wall = joint.thicknesses.toSorted((one, other) => one.value - other.value)[0];
  const thickness = joint.type === "fillet" ? (joint.throat ?? wall) : wall;
  if (thickness === undefined) return undefined;
  // An echo beyond its level is refused by that, whatever the tester calls what gave it.
  const byEcho =
    standard === echoed && found.echo !== undefined ? echoFault(found, echoes, report.level, thickness) : undefined;
  if (byEcho !== undefined && !byEcho.unsure) return byEcho;
  const faults = familiesOf(found.type)
    // What a mark of the film hides is asked about by itself.
    .filter((family) => family !== artefact)
    .map((named): Fault | undefined => {
      const family = asShaped(named, found, standard);
      const isShaped = family !== named;
      const row = limits(standard, report.level, family, thickness);
      switch (row.text("permitted")) {
        case "never":
          return { at: "type", said: `is a ${family}; none is permitted`, unsure: false };
        case "limited":
          return shaped(
            isShaped,
            overLimit(
              "length",
              found.length ?? (row.quantity("size") === undefined ? undefined : found.size),
              lengthOf(row, found),
            ) ??
              overLimit(
                "size",
                found.size ?? (surface.includes(standard) ? found.length : undefined),
                row.quantity("size"),
              ),
          );
        case "by echo":
          return echoFault(found, echoes, report.level, thickness);
        case "by echo, if agreed":
          return (
            echoFault(found, echoes, report.level, thickness) ?? {
              at: "type",
              said: `is ${family}; its echo lies within the level, and the report does not say that such ones are accepted`,
              unsure: true,
            }
          );
        default:
          return {
            at: "type",
            said:
              family === unnamed
                ? "names no imperfection of ISO 6520-1"
                : `is of a sort (${family}) no table at hand has a limit for`,
            unsure: true,
          };
      }
    })
    .filter((one) => one !== undefined);
  return faults.find(({ unsure }) => !unsure) ?? faults[0];
}

/** What is wrong with an indication that is taken as another sort by its shape says so. */
const shaped = (isShaped: boolean, fault: Fault | undefined): Fault | undefined =>
  fault === undefined || !isShaped
    ? fault
    : { ...fault, said: `${fault.said}: it is longer than three times its width, and so linear` };

/** A length is asked for where it is all the row limits, or where one is stated: a round pore has but one size. */
function lengthOf(row: Row, { length }: Found): Measure | undefined {
  const most = row.quantity("length");
  return row.quantity("size") !== undefined && length === undefined ? undefined : most;
}

function echoFault(
  { echo, length }: Found,
  echoes: Given["echoes"],
  level: string,
  thickness: Measure,
): Fault | undefined {
  if (echo === undefined || length === undefined)
    return {
      at: "type",
      said: `states no ${echo === undefined ? "echo" : "length"}, by which it would be judged`,
      unsure: true,
    };
  const most = echoes(level, thickness, exactly(length.value / thickness.value, "1")).quantity("echo");
  if (most === undefined || atMost(echo, most) === "yes") return undefined;
  return {
    at: "echo",
    said: `of ${length.text} gives ${echo.text}; ${most.text} is the most permitted`,
    unsure: false,
  };
}

export const indicationPermitted = rule({
  id: "indication-permitted",
  title: "What a tester accepted lies within the acceptance level he judged to",
  basis: fromMemory(
    "EN ISO 5817, EN ISO 10675-1, EN ISO 11666, EN ISO 23277, EN ISO 23278",
    undefined,
    "acceptance levels; each indication by itself: what several in a length of weld come to is not added up",
  ),
  kind: "ndt-report#rows",
  severity: "nonconformity",
  owner: "testing",
  inputs,
  *check(given) {
    for (const found of given.indications) {
      // What the tester rejected is closed by its own check.
      if ((found.verdict ?? given.result) !== "accepted" && given.result !== "accepted") continue;
      if (found.verdict === "rejected") continue;
      const fault = faultOf(found, given);
      if (fault !== undefined)
        yield {
          at: [found, fault.at],
          name: found.$.id,
          message: `${found.$.name} (${found.type}) of joint ${given.joint.$.name} is accepted and ${fault.said}`,
          why: `level ${given.report.level} of ${given.report.standard}, ${given.joint.thicknesses.map(({ text: one }) => one).join(" and ")} thick`,
          hint: fault.unsure
            ? "compare with the report; state what is missing, or answer this query with the limit that was applied"
            : "compare with the report; if it is true, reject it, have it repaired and tested again",
          unsure: fault.unsure,
          related: [{ at: [given.report, "level"], message: `judged to level ${given.report.level}` }],
        };
    }
  },
  examples: indicationExamples,
});

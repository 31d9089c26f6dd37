import { commonPractice, ownChoice } from "../../model/basis.ts";
import { compareDays } from "../../model/dates.ts";
import { anyOf, date, list, optional, quantity, text, thing, things, type Thing } from "../../model/input.ts";
import { holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { usesOfInstrument } from "../shared/reports.ts";

const calibration = {
  certificate: text("certificate"),
  from: date("date"),
  to: date("validTo"),
  asFound: text("asFound"),
  asLeft: text("asLeft"),
};

/** A report on the instrument: closed, it has decided on what was read with it. */
const report = { state: text("state"), raised: date("raised") };

/** Whether a calibration holds on a day, by which the instrument left the laboratory within its limits. */
const holdsOn = (one: Thing<typeof calibration>, day: string) =>
  compareDays(one.from.day, day) <= 0 && compareDays(day, one.to.day) <= 0 && one.asLeft === "within limits";

export const calibrated = rule({
  id: "calibrated",
  title: "An instrument is used within a calibration, and the next one finds it within its limits",
  basis: commonPractice(
    "measuring equipment is calibrated before use; what is found out of its limits puts earlier readings in doubt",
  ),
  kind: "instrument",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    calibrations: list(thing("calibrations[]", calibration)),
    nonconformities: anyOf(things("<nonconformity-report:affected[]>", report)),
    ...usesOfInstrument,
  },
  *check({ calibrations, nonconformities, ...used }, instrument) {
    const uses = Object.values(used).flat();
    const said = calibrations
      .map((one) => `${one.certificate}: ${one.from.day} to ${one.to.day}, left ${one.asLeft}`)
      .join("; ");
    const outside = uses.filter(({ day }) => !calibrations.some((one) => holdsOn(one, day.day)));
    const days = (list: typeof uses) => [...new Set(list.map(({ day }) => day.day))].sort().join(", ");
    const related = (list: typeof uses) =>
      list.map((one) => ({ at: one, message: `used in ${one.$.name} on ${one.day.day}` }));
    if (outside.length > 0)
      yield {
        at: "calibrations",
        name: "validity",
        message: `instrument ${instrument.name} was used outside its calibration on ${days(outside)}`,
        why: said,
        hint: "add the calibration that covers the day, or raise a nonconformity report: a later calibration alone does not cure it",
        related: related(outside),
      };
    for (const bad of calibrations.filter(({ asFound }) => asFound === "outside limits")) {
      const before = calibrations
        .filter(({ from }) => compareDays(from.day, bad.from.day) < 0)
        .map(({ from }) => from.day);
      const since = before.sort().at(-1);
      const doubtful = uses.filter(
        ({ day }) =>
          compareDays(day.day, bad.from.day) < 0 && (since === undefined || compareDays(since, day.day) <= 0),
      );
      const decided = nonconformities.some(
        (one) => one.state === "closed" && compareDays(bad.from.day, one.raised.day) <= 0,
      );
      if (doubtful.length > 0 && !decided)
        yield {
          at: [bad, "asFound"],
          name: bad.certificate,
          message: `instrument ${instrument.name} was found outside its limits on ${bad.from.day}, after it was used on ${days(doubtful)}`,
          why: said,
          hint: "raise a nonconformity report that names the instrument, decides on every reading since the calibration before, and have it closed; else repeat what was measured",
          related: related(doubtful),
        };
    }
  },
  examples: [
    { name: "on the first and on the last day", given: gauge(["2026-01-10", "2026-07-10"]), objections: [] },
    { name: "never used", given: gauge([]), objections: [] },
    {
      name: "a day before",
      given: gauge(["2026-01-09"]),
      objections: ["instrument X-01 was used outside its calibration on 2026-01-09"],
    },
    {
      name: "a day after",
      given: gauge(["2026-07-11"]),
      objections: ["instrument X-01 was used outside its calibration on 2026-07-11"],
    },
    {
      name: "not put right by the laboratory",
      given: gauge(["2026-03-01"], { asLeft: "outside limits" }),
      objections: ["instrument X-01 was used outside its calibration on 2026-03-01"],
    },
    {
      name: "found wrong, put right, then used",
      given: gauge(["2026-03-01"], { asFound: "outside limits" }),
      objections: [],
    },
    {
      name: "used, then found wrong",
      given: foundWrong(),
      objections: ["instrument X-01 was found outside its limits on 2026-07-08, after it was used on 2026-03-01"],
    },
    {
      name: "used, then found wrong, and decided on",
      given: foundWrong({ $: "NCR-04", state: "closed", raised: "2026-07-09" }),
      objections: [],
    },
    {
      name: "used, then found wrong, and reported only",
      given: foundWrong({ $: "NCR-04", state: "raised", raised: "2026-07-09" }),
      objections: ["instrument X-01 was found outside its limits on 2026-07-08, after it was used on 2026-03-01"],
    },
    {
      name: "used, then found wrong; what was decided is older",
      given: foundWrong({ $: "NCR-01", state: "closed", raised: "2026-03-02" }),
      objections: ["instrument X-01 was found outside its limits on 2026-07-08, after it was used on 2026-03-01"],
    },
  ],
});

/** Used under a first calibration, and found outside its limits by the second. */
function foundWrong(...reports: readonly Readonly<Record<string, string>>[]) {
  const used = gauge(["2026-03-01"]);
  const second = {
    certificate: "C-2",
    from: "2026-07-08",
    to: "2027-01-08",
    asFound: "outside limits",
    asLeft: "within limits",
  };
  return { ...used, calibrations: [...used.calibrations, second], nonconformities: reports };
}

function gauge(days: readonly string[], changes: Readonly<Record<string, string>> = {}) {
  return {
    calibrations: [
      {
        certificate: "C-1",
        from: "2026-01-10",
        to: "2026-07-10",
        asFound: "within limits",
        asLeft: "within limits",
        ...changes,
      },
    ],
    gauges: days.map((day) => ({ $: "PT-01#A", day })),
  };
}

const names = { range: "range", accuracyClass: "accuracy class", resolution: "resolution" } as const;

export const gaugeAsRegistered = rule({
  id: "gauge-as-registered",
  title: "A test report describes its gauges as the register of instruments does",
  basis: ownChoice("the same gauge has the same scale on both papers"),
  kind: "pressure-test#gauges",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    range: quantity("range", "bar"),
    accuracyClass: quantity("accuracyClass", "%"),
    resolution: quantity("resolution", "bar"),
    instrument: thing("instrument", {
      range: optional(quantity("range.maximum", "bar")),
      accuracyClass: optional(quantity("accuracyClass", "%")),
      resolution: optional(quantity("resolution", "bar")),
    }),
  },
  *check({ instrument, ...stated }, gauge) {
    for (const name of ["range", "accuracyClass", "resolution"] as const) {
      const [own, registered] = [stated[name], instrument[name]];
      if (registered !== undefined && holds(own, "=", registered) === "no")
        yield {
          at: name,
          name,
          message: `gauge ${gauge.name} has ${names[name]} ${own.text} on the test report; instrument ${instrument.$.name} has ${registered.text}`,
          why: "both describe the same gauge",
          hint: "compare with the dial and the calibration certificate; correct the wrong one, or name the other gauge",
          related: [{ at: [instrument, name], message: `${registered.text} here` }],
        };
    }
  },
  examples: [
    { name: "the same", given: described("40 bar", "1.0 %", "0.1 bar"), objections: [] },
    { name: "the same in another unit", given: described("4 MPa", "1 %", "0.01 MPa"), objections: [] },
    {
      name: "another range",
      given: described("25 bar", "1.0 %", "0.1 bar"),
      objections: ["gauge X-01 has range 25 bar on the test report; instrument PG-04 has 40 bar"],
    },
    {
      name: "another class",
      given: described("40 bar", "1.6 %", "0.1 bar"),
      objections: ["gauge X-01 has accuracy class 1.6 % on the test report; instrument PG-04 has 1.0 %"],
    },
    {
      name: "another resolution",
      given: described("40 bar", "1.0 %", "0.2 bar"),
      objections: ["gauge X-01 has resolution 0.2 bar on the test report; instrument PG-04 has 0.1 bar"],
    },
  ],
});

function described(range: string, accuracyClass: string, resolution: string) {
  return {
    range,
    accuracyClass,
    resolution,
    instrument: { $: "PG-04", range: "40 bar", accuracyClass: "1.0 %", resolution: "0.1 bar" },
  };
}

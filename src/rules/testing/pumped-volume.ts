import { derivedFrom } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, things } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { heldThrough } from "../../requirements/testing-conditions.ts";
import { rule } from "../../model/rule.ts";
import { compressibilityOfWater, kell } from "../../model/water.ts";

/** Under pressure water is stiffer than at none, at 100 bar by less than this share. */
const stiffer = 0.05;
/** Of the volume: what water and shell give way to at the stresses of a test, and as much again for air left in. */
const muchAir = 0.01;

/** Young's modulus of steel, N/mm², and its transverse contraction. */
const [young, poisson] = [210_000, 0.3];
/** Of the widening of a thin course: ends and plates hold it near them. */
const free = 0.8;

/** Litres by which a course becomes larger under a pressure in bar, counted low. */
function widening(
  { inside, outside, wall, length }: Readonly<Record<"inside" | "outside" | "wall" | "length", Measure | undefined>>,
  pressure: number,
): number {
  if (wall === undefined || length === undefined) return 0;
  const diameter = inside?.value ?? (outside === undefined ? 0 : outside.value - 2 * wall.value);
  const hoop = ((pressure / 10) * diameter) / (2 * wall.value * young);
  const litres = (Math.PI / 4) * diameter ** 2 * length.value * 1e-6;
  return free * litres * 2 * hoop * (1 - poisson / 2);
}

/** 4.2 l: water alone takes 3000 l·15.8 bar·4.7e-5/bar·0.95, and the course widens by 2752 l·2·5.57e-4·0.85·0.8. */
const course = { inside: "1184 mm", wall: "8 mm", length: "2500 mm" };

export const pumpedVolume = rule({
  id: "pumped-volume",
  title: "The water pumped in is what water, vessel and little air give way to",
  basis: derivedFrom(
    `water is compressed by pressure times its compressibility (${kell}); a shell course widens by its hoop strain, p·D/(2·t·E) less a half times 0.3 of it, with E 210 000 N/mm², counted to four fifths because ends and plates hold it; a hundredth of the volume is beyond what water and a shell within its yield strength give way to`,
  ),
  kind: "pressure-test",
  when: [
    heldThrough,
    { path: "medium", equals: ["water", "water with additive"] },
    { path: "pumpedVolume", exists: true },
  ],
  severity: "query",
  owner: "quality",
  inputs: {
    pumped: quantity("pumpedVolume", "l"),
    pressure: quantity("testPressure", "bar"),
    volume: quantity("equipment.volume", "l"),
    courses: anyOf(
      things('book.part[role="shell-course"]', {
        inside: optional(quantity("insideDiameter", "mm")),
        outside: optional(quantity("outsideDiameter", "mm")),
        wall: optional(quantity("nominalThickness", "mm")),
        length: optional(quantity("length", "mm")),
      }),
    ),
    water: list(quantity("readings[].waterTemperature", "°C")),
  },
  *check({ pumped: stated, pressure, volume, courses, water }, test) {
    const softness = Math.min(...water.map(({ value }) => compressibilityOfWater(value)));
    const wider = courses.reduce((sum, course) => sum + widening(course, pressure.value), 0);
    const least = volume.value * pressure.value * softness * (1 - stiffer) + wider;
    const most = volume.value * muchAir;
    const little = stated.high + stated.halfUnit < least;
    if (!little && stated.low - stated.halfUnit <= most) return;
    yield {
      at: "pumped",
      accuses: [],
      message: little
        ? `${stated.text} were pumped in pressure test ${test.name}; water and shell take ${least.toPrecision(2)} l`
        : `${stated.text} were pumped in pressure test ${test.name}, more than a hundredth of ${volume.text}`,
      why: `volume ${volume.text}, test pressure ${pressure.text}`,
      hint: little
        ? "compare volume, pressure and what was pumped with the report: at such a pressure more must have gone in"
        : "compare with the report; so much goes in where much air was left, or where something gave way",
      related: [{ at: "volume", message: `${volume.text} here` }],
    };
  },
  examples: [
    {
      name: "water, shell and some air",
      given: { pumped: "7.1 l", pressure: "15.8 bar", volume: "3000 l", water: ["15 °C"], courses: [course] },
      objections: [],
    },
    {
      name: "a tenth",
      given: { pumped: "0.71 l", pressure: "15.8 bar", volume: "3000 l", water: ["15 °C"], courses: [course] },
      objections: ["0.71 l were pumped in pressure test X-01; water and shell take 4.2 l"],
    },
    {
      name: "ten times",
      given: { pumped: "71 l", pressure: "15.8 bar", volume: "3000 l", water: ["15 °C"] },
      objections: ["71 l were pumped in pressure test X-01, more than a hundredth of 3000 l"],
    },
  ],
});

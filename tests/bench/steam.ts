import { r1, r2, r4_P_Tsat } from "@neutrium/thermo.eos.iapws97/dist/PT.js";
import { performance } from "node:perf_hooks";
import { region1 } from "../../src/steam/region-1-coefficients.ts";
import { region2Ideal, region2Residual } from "../../src/steam/region-2-coefficients.ts";
import { liquid, saturationTemperature, vapour } from "../../src/steam/index.ts";

/** A property function of pressure in MPa and temperature in K. */
type Call = (p: number, T: number) => unknown;

/**
 * The six sums of a region as they stand in the release, a power for each factor of each term: what the implementation of
 * the registry spends on the equation itself, without the transport properties it always adds.
 */
function sumsAsPrinted(x: number, y: number, terms: readonly (readonly [number, number, number])[]): number {
  let total = 0;
  for (const [I, J, n] of terms) {
    total += n * x ** I * y ** J;
    total += n * I * x ** (I - 1) * y ** J;
    total += n * I * (I - 1) * x ** (I - 2) * y ** J;
    total += n * x ** I * J * y ** (J - 1);
    total += n * x ** I * J * (J - 1) * y ** (J - 2);
    total += n * I * x ** (I - 1) * J * y ** (J - 1);
  }
  return total;
}

const ideal = region2Ideal.map(([J, n]) => [0, J, n] as const);
const tasks: readonly {
  readonly name: string;
  readonly ours: Call;
  readonly asPrinted?: Call;
  readonly theirs: Call;
  readonly at: readonly [number, number];
}[] = [
  {
    name: "liquid (p, T)",
    ours: liquid,
    asPrinted: (p, T) => sumsAsPrinted(7.1 - p / 16.53, 1386 / T - 1.222, region1),
    theirs: r1,
    at: [3, 400],
  },
  {
    name: "vapour (p, T)",
    ours: vapour,
    asPrinted: (p, T) => sumsAsPrinted(1, 540 / T, ideal) + sumsAsPrinted(p, 540 / T - 0.5, region2Residual),
    theirs: r2,
    at: [1, 500],
  },
  { name: "saturation temperature", ours: saturationTemperature, theirs: r4_P_Tsat, at: [1, 0] },
];

const calls = 20_000;

/** Nanoseconds per call; the pressure moves a little, so that no result can be kept. */
function nanoseconds(call: Call, [p, T]: readonly [number, number]): number {
  const started = performance.now();
  for (let k = 0; k < calls; k++) call(p + k * 1e-7, T);
  return ((performance.now() - started) * 1e6) / calls;
}

const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** IAPWS-IF97 against the implementation of the npm registry and against the equations as printed; medians, one process. */
export function measureSteam(runs: number): void {
  console.log(`\nIAPWS-IF97, ns per call (median of ${runs})`);
  console.log("property                   ours  as printed  registry  × ours: printed, registry");
  for (const { name, ours, asPrinted, theirs, at } of tasks) {
    const lists = [ours, asPrinted, theirs].map((call) => ({ call, times: [] as number[] }));
    // Interleaved, so that a slow moment of the machine meets every one; the first round warms up.
    for (let run = 0; run <= runs; run++)
      for (const { call, times } of lists) if (call !== undefined) times.push(nanoseconds(call, at));
    const [own = 0, printed = 0, other = 0] = lists.map(({ times }) => median(times.slice(1)));
    const columns = [own.toFixed(0), printed === 0 ? "" : printed.toFixed(0), other.toFixed(0)];
    const ratios = [printed === 0 ? "" : (printed / own).toFixed(1), (other / own).toFixed(1)];
    console.log(
      name.padEnd(24) +
        [7, 12, 10].map((width, index) => (columns[index] ?? "").padStart(width)).join("") +
        ratios.map((text) => text.padStart(13)).join(""),
    );
  }
  console.log("The registry's functions add viscosity, conductivity and three other properties to each state.");
}

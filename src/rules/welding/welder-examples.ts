// What the examples of the rules about welders are given.

/** A run welded on the last day of the first half-year after the test. */
export function run(
  changes: Readonly<Record<string, string>>,
  certificate: Readonly<Record<string, string | readonly string[]>> = {},
) {
  return {
    ...repair(changes, certificate),
    layer: "root",
    position: changes["position"] ?? "PA",
    runs: laid(["root", changes["deposited"] ?? "8.0 mm"], changes["process"] ?? "135"),
  };
}

/** A procedure whose root goes over by short circuits and whose other runs spray. */
export function twoModes() {
  const run = (name: string, mode: string) => ({ name, process: "135", mode });
  return { transferModes: ["dip", "spray"], windows: [run("root", "dip"), run("fill", "spray"), run("cap", "spray")] };
}

/** A joint of pipes of 8 mm. */
export function pipes(diameter: string) {
  return { $: "L1", detail: "bs", positions: ["PA"], thicknesses: ["8.0 mm", "8.0 mm"], diameter };
}

/** Runs of welder W07, each with its layer and what it deposited. */
export function laid(...runs: readonly (string | readonly [layer: string, deposited: string | undefined])[]) {
  const process = runs.find((one) => typeof one === "string") ?? "135";
  return runs.flatMap((one) => {
    if (typeof one === "string") return [];
    const [layer, deposited] = one;
    return { layer, process, welders: ["W07"], ...(deposited !== undefined && { deposited }) };
  });
}

/** A repair by a welder whose certificate holds on the last day of the first half-year after the test. */
export function repair(
  changes: Readonly<Record<string, string>>,
  certificate: Readonly<Record<string, string | readonly string[]>> = {},
) {
  const own = Object.fromEntries(
    Object.entries(changes).filter(([name]) => name !== "position" && name !== "deposited"),
  );
  const held = {
    $: "WQ-12",
    standard: "EN ISO 9606-1",
    process: "135",
    product: "plate",
    weldType: "butt",
    fillerGroup: "FM1",
    thickness: "8.0 mm",
    positions: ["PA", "PF"],
    detail: "ss nb",
    testDate: "2026-01-15",
    route: "9.3b",
    ...certificate,
  };
  return {
    confirmationMonths: "6",
    revalidationMonths: "24",
    retestMonths: "36",
    day: "2026-07-15",
    process: "135",
    fillers: ["FM1"],
    welders: [{ $: "W07", qualifications: [held] }],
    joint: { $: "L1", detail: "bs", positions: ["PA"], thicknesses: ["8.0 mm", "8.0 mm"] },
    ...own,
  };
}

import type { Step } from "../model/path.ts";

/** A step with the list step and filters that follow it: what is missing is the step *so filtered*. */
export interface Group {
  readonly head: Step | null;
  readonly tail: readonly Step[];
  readonly filters: readonly Step[];
}

const grouped = new WeakMap<readonly Step[], readonly Group[]>();

/** Steps of a path, each with what follows it. Found once for each path. */
export function groupsOf(steps: readonly Step[]): readonly Group[] {
  const known = grouped.get(steps);
  if (known !== undefined) return known;
  const found: { head: Step | null; tail: Step[] }[] = [];
  for (const step of steps) {
    if (step.type !== "items" && step.type !== "filter") found.push({ head: step, tail: [] });
    else if (found.length === 0) found.push({ head: null, tail: [step] });
    else found.at(-1)?.tail.push(step);
  }
  const groups = found.map((group) => ({
    ...group,
    filters: group.tail.filter((step) => step.type === "filter"),
  }));
  grouped.set(steps, groups);
  return groups;
}

import type { Condition } from "../../model/input.ts";

/** A post that a field of a record names somebody for. */
export interface Post {
  readonly id: string;
  readonly kind: string;
  readonly when?: readonly Condition[];
  /** Path of the link to the person, and of the day it was done. */
  readonly path: string;
  readonly day: string;
  /** Of these the register of people must give one. */
  readonly roles: readonly string[];
  /** What he did there, before the name of the record. */
  readonly did: string;
  /** The schema does not say that somebody is named, or when: where nobody is, the rule does not apply. */
  readonly open?: true;
}

/** Kinds of report of which who tested is named as `by`. */
const reports = [
  ["hardness-role", "hardness-report"],
  ["leak-test-role", "leak-test"],
  ["alloy-role", "alloy-report"],
] as const;

/** Who tests, measures, examines and sets. */
export const postsOfTests: readonly Post[] = [
  {
    id: "tester-role",
    kind: "ndt-report",
    path: "operator",
    day: "date",
    roles: ["testing", "inspection body"],
    did: "tested for",
  },
  {
    id: "reviewer-role",
    kind: "ndt-report",
    path: "reviewer",
    day: "date",
    roles: ["testing", "inspection body"],
    did: "reviewed",
  },
  ...reports.map(([id, kind]): Post => ({
    id,
    kind,
    path: "by",
    day: "date",
    roles: ["testing", "laboratory", "quality control", "inspection body"],
    did: "tested for",
  })),
  {
    id: "dimension-check-role",
    kind: "dimension-check",
    path: "by",
    day: "date",
    roles: ["quality control", "shop", "testing", "checker", "inspection body", "laboratory"],
    did: "measured for",
    open: true,
  },
  {
    id: "coating-role",
    kind: "coating-report",
    path: "by",
    day: "date",
    roles: ["quality control", "supplier", "testing", "inspection body"],
    did: "measured for",
  },
  {
    id: "visual-examination-role",
    kind: "pressure-test",
    path: "visualExamination.by",
    day: "visualExamination.date",
    roles: ["quality control", "testing", "inspection body"],
    did: "looked over",
    open: true,
  },
  {
    id: "valve-bench-role",
    kind: "safety-valve",
    path: "bench.tester",
    day: "bench.date",
    roles: ["supplier", "laboratory", "testing", "quality control", "inspection body"],
    did: "set and tested",
    open: true,
  },
  {
    id: "function-test-role",
    kind: "fitting#functionTests",
    path: "by",
    day: "date",
    roles: ["supplier", "shop", "quality control", "testing", "laboratory", "design", "inspection body"],
    did: "tested the function of",
    open: true,
  },
];

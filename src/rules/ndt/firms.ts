import { commonPractice } from "../../model/basis.ts";
import { list, text, thing } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";

interface Post {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  readonly path: string;
  readonly roles: readonly string[];
  readonly what: string;
}

const posts: readonly Post[] = [
  {
    id: "laboratory-role",
    title: "Who made a test report is registered for testing",
    kind: "ndt-report",
    path: "laboratory",
    roles: ["testing", "laboratory", "maker", "inspection body"],
    what: "report",
  },
  {
    id: "tester-body-role",
    title: "Who certifies testers is registered as an inspection body",
    kind: "ndt-personnel",
    path: "body",
    roles: ["inspection body"],
    what: "tester's certificate",
  },
];

/** Firms and bodies that stand in a post hold the role it asks for. */
export const firmsInPosts: readonly Rule[] = posts.map(({ id, title, kind, path, roles, what }) =>
  rule({
    id,
    title,
    basis: commonPractice("register of organisations: what each does for the book"),
    kind,
    when: [{ path, exists: true }],
    severity: "query",
    owner: "testing",
    inputs: { firm: thing(path, { roles: list(text("roles[]")) }) },
    *check({ firm }, subject) {
      if (!firm.roles.some((role) => roles.includes(role)))
        yield {
          at: "firm",
          accuses: [],
          on: firm,
          name: path,
          message: `${firm.$.name} stands on ${what} ${subject.name} without being registered as ${roles.join(" or ")}`,
          why: `registered as: ${firm.roles.join(", ")}`,
          hint: "correct the register of organisations, or name who it was",
        };
    },
    examples: [
      { name: "registered", given: { firm: { $: "F1", roles: [roles[0] ?? ""] } }, objections: [] },
      {
        name: "registered for something else",
        given: { firm: { $: "F1", roles: ["mill"] } },
        objections: [`F1 stands on ${what} X-01 without being registered as ${roles.join(" or ")}`],
      },
    ],
  }),
);

import { weldedEnds } from "../../requirements/boiler-conditions.ts";
import { weldedRepair } from "../../requirements/testing-conditions.ts";
import { aKind } from "../shared/words.ts";
import { postsOfTests, type Post } from "./posts-of-tests.ts";

const maker = [
  "design",
  "checker",
  "welding coordinator",
  "quality control",
  "document control",
  "authorised signatory",
];
const approved = (kind: string): Post => ({
  id: `${kind}-approver-role`,
  kind: `${kind}#revisions`,
  path: "approvedBy",
  day: "approved",
  roles: [...maker, "testing", "inspection body", "client", "supplier"],
  did: "approved",
  open: true,
});
/** The posts, in the order in which a book is made. */
export const posts: readonly Post[] = [
  {
    id: "welder-role",
    kind: "weld-log#runs",
    path: "welders[]",
    day: "date",
    roles: ["welder", "welding operator"],
    did: "welded",
  },
  {
    id: "repair-welder-role",
    kind: "repair",
    when: [weldedRepair],
    path: "welders[]",
    day: "date",
    roles: ["welder", "welding operator"],
    did: "welded",
  },
  {
    id: "tube-end-operator-role",
    kind: "tube-end-group",
    path: "operators[]",
    day: "date",
    roles: ["shop", "welder", "welding operator"],
    did: "made",
  },
  {
    id: "tube-end-welder-role",
    kind: "tube-end-group",
    when: [weldedEnds],
    path: "welders[]",
    day: "date",
    roles: ["welder", "welding operator"],
    did: "welded",
  },
  ...postsOfTests,
  {
    id: "declaration-signatory",
    kind: "declaration",
    path: "signatory",
    day: "date",
    roles: ["authorised signatory"],
    did: "signed",
  },
  {
    id: "body-certificate-signatory",
    kind: "body-certificate",
    path: "signatory",
    day: "date",
    roles: ["inspection body"],
    did: "signed",
  },
  {
    id: "mark-witness-role",
    kind: "piece-mark#transfers",
    path: "witness",
    day: "date",
    roles: ["quality control", "inspection body", "client", "welding coordinator"],
    did: "witnessed the marking of",
    open: true,
  },
  {
    id: "nonconformity-found-role",
    kind: "nonconformity-report",
    path: "foundBy",
    day: "raised",
    roles: [...maker, "shop", "testing", "welder", "welding operator", "inspection body", "client"],
    did: "found what is in",
    open: true,
  },
  {
    id: "nonconformity-closed-role",
    kind: "nonconformity-report",
    path: "closedBy",
    day: "closed",
    roles: ["quality control", "welding coordinator", "inspection body", "authorised signatory"],
    did: "closed",
    open: true,
  },
  {
    id: "drawing-preparer-role",
    kind: "drawing#revisions",
    path: "preparedBy",
    day: "date",
    roles: ["design", "checker", "supplier"],
    did: "drew up",
    open: true,
  },
  {
    id: "drawing-checker-role",
    kind: "drawing#revisions",
    path: "checkedBy",
    day: "date",
    roles: ["design", "checker", "inspection body", "supplier"],
    did: "checked",
    open: true,
  },
  {
    id: "calculation-checker-role",
    kind: "calculation-sheet",
    path: "checkedBy",
    day: "date",
    roles: ["design", "checker", "inspection body", "supplier"],
    did: "checked",
    open: true,
  },
  {
    id: "calculation-preparer-role",
    kind: "calculation-sheet",
    path: "preparedBy",
    day: "date",
    roles: ["design", "checker", "supplier"],
    did: "prepared",
    open: true,
  },
  {
    id: "comparison-role",
    kind: "original",
    path: "transcription.comparedBy",
    day: "transcription.date",
    roles: ["document control", "quality control", "checker", "design"],
    did: "compared",
    open: true,
  },
  ...["document", "drawing", "procedure", "welding-procedure"].map(approved),
  {
    id: "deviation-decided-role",
    kind: "deviation",
    path: "by",
    day: "date",
    roles: [...maker, "inspection body", "client"],
    did: "decided",
    open: true,
  },
];

/** Rows as they are said in a title. */
const rowWords: Readonly<Record<string, string>> = {
  "weld-log#runs": "a run",
  "fitting#functionTests": "a fitting",
  "piece-mark#transfers": "a piece",
  "document#revisions": "a revision of a document",
  "drawing#revisions": "a revision of a drawing",
  "procedure#revisions": "a revision of a procedure",
  "welding-procedure#revisions": "a revision of a welding procedure",
};

/** What a post is held at, as a title says it: "a run". */
export const postWords = (kind: string): string => rowWords[kind] ?? aKind(kind);

import { describeBasis } from "../../model/basis.ts";
import type { Finding, Outcome } from "../../model/finding.ts";
import { spokenOutcome, subjectWords } from "../../model/titles.ts";
import type { Block, FindingItem, Inline, Text } from "../blocks.ts";
import { findingAnchor } from "./address.ts";
import { listed } from "./listed.ts";
import { counted, upper } from "./titles.ts";
import { termOf } from "./values.ts";
import { recordOf, nameOf, type Context } from "./context.ts";
import { partsOfAddress } from "../../model/record.ts";
import { recordId } from "../../model/subject.ts";

export const findingsPage = "findings.html";

const shownReasons = 6;
const shownRelated = 12;
const shownWaiting = 8;

/**
 * Why outcomes of one verdict ended as they did: the findings they ended in or wait for, each once, as links behind one
 * lead; or when they are due. Empty for what ended well.
 */
export function reasonsOf(context: Context, outcomes: readonly Outcome[], more: readonly string[] = []): Text {
  const due = new Set(outcomes.flatMap(({ because }) => (because?.type === "not due" ? [because.milestone] : [])));
  if (due.size > 0) return dueText([...due]);
  const keys = new Set([
    ...outcomes.flatMap(({ because, findings }) =>
      because === undefined || because.type === "not due" ? findings : because.keys,
    ),
    ...more,
  ]);
  const reasons = reasonsOfKeys(context, keys);
  if (reasons.length === 0) return [];
  const waits = more.length > 0 || outcomes.some(({ verdict }) => verdict === "not judged");
  return [...(waits ? ["because of: "] : []), ...reasons];
}

/** When what is not there yet becomes due. */
export const dueText = (milestones: readonly string[]): Text =>
  milestones.length === 0
    ? []
    : [`due at milestone ${milestones.map((milestone) => `“${termOf(milestone)}”`).join(", ")}`];

/** Findings as links, each with the exception that answers it. */
export function reasonsOfKeys(context: Context, keys: Iterable<string>): Text {
  const reasons = [...keys].flatMap((key): Text[] => {
    const finding = context.findings.get(key);
    if (finding === undefined || finding.severity === "note") return [];
    const link: Inline = {
      type: "link",
      to: { page: findingsPage, anchor: findingAnchor(key) },
      text: ofWhom(context, finding),
    };
    return [
      finding.exception === null ? [link] : [link, ", answered by ", ...exceptionText(context, finding.exception)],
    ];
  });
  return listed(reasons, shownReasons, "; ");
}

/** What a finding says, where another thing is spoken of: its own subject is named, unless it names it itself. */
function ofWhom({ judged }: Context, { message, subject }: Finding): string {
  if (subject === null || message.includes(recordId(subject.id))) return message;
  return `${subjectWords(judged.definitions.kinds, subject)}: ${message}`;
}

export function findingItem(context: Context, finding: Finding): FindingItem {
  const record = finding.subject === null ? undefined : recordOf(context, finding.subject);
  const position = context.judged.loaded.locator.position(finding.place);
  const at: Text = [
    { type: "code", text: `${finding.place.file}:${position.line}:${position.column}` },
    ...(record === undefined ? [] : [" ", nameOf(context, record)]),
  ];
  const rows = [
    { label: "at", value: at },
    ...sheetRow(context, finding.place),
    { label: "why", value: [sentence(finding.why)] },
    { label: "hint", value: [sentence(finding.hint)] },
    ...finding.related.slice(0, shownRelated).map((one) => ({ label: "see", value: relatedText(context, one) })),
    ...(finding.related.length > shownRelated
      ? [{ label: "see", value: [`and ${counted(finding.related.length - shownRelated, "more place")}`] }]
      : []),
    ...(finding.waiting.length > 0
      ? [
          {
            label: "waiting",
            value: [
              `${counted(finding.waiting.length, "check")}: `,
              ...listed(
                finding.waiting.map((name) => [
                  spokenOutcome({ titles: context.judged.titles, kinds: context.kinds }, name),
                ]),
                shownWaiting,
              ),
            ],
          },
        ]
      : []),
    ...(finding.exception === null ? [] : [{ label: "answered", value: exceptionText(context, finding.exception) }]),
  ];
  return {
    anchor: findingAnchor(finding.key),
    severity: finding.severity,
    message: [sentence(finding.message)],
    rows,
    notes: [
      { lead: "Basis", text: [describeBasis(finding.basis)] },
      ...(finding.due === null ? [] : [{ text: [`due at milestone “${termOf(finding.due)}”`] as Text }]),
      { text: [{ type: "code", text: finding.key }] },
      { text: [{ type: "code", text: `digest ${finding.digest}` }] },
    ],
  };
}

/** Where the shop finds it: the row of the sheet that its record came from. */
function sheetRow(context: Context, place: Finding["place"]): FindingItem["rows"] {
  const sheet = context.sheetAt(place);
  return sheet === undefined ? [] : [{ label: "sheet", value: [sheet] }];
}

/** A text as a sentence; the name of a file keeps its letters. */
const sentence = (text: string) => {
  const isName = /^\S*[./]\S/.test(text);
  return text === "" ? "" : `${isName ? text : upper(text)}${/[.!?]$/.test(text) ? "" : "."}`;
};

function relatedText(context: Context, one: Finding["related"][number]): Text {
  const record = one.subject === null ? undefined : recordOf(context, one.subject);
  const line = context.judged.loaded.locator.position(one.place).line;
  return [
    { type: "code", text: `${one.place.file}:${line}` },
    " ",
    one.message,
    ...(record === undefined ? [] : [", ", nameOf(context, record)]),
  ];
}

export function exceptionText(context: Context, address: string): Text {
  const record = recordOf(context, partsOfAddress(address));
  return record === undefined ? [address] : [nameOf(context, record)];
}

/** Findings grouped by who must act, open ones first. */
export function findingGroups(context: Context, findings: readonly Finding[]): Block[] {
  const owners = [...new Set(findings.map(({ owner }) => owner))].sort();
  return owners.flatMap((owner): Block[] => [
    { type: "heading", level: 2, text: owner.charAt(0).toUpperCase() + owner.slice(1) },
    {
      type: "findings",
      findings: findings.filter((one) => one.owner === owner).map((one) => findingItem(context, one)),
    },
  ]);
}

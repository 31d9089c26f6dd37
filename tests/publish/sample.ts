import type { Block, ContentsEntry, FindingItem } from "../../src/publish/blocks.ts";
import type { Page, Publication } from "../../src/publish/publication.ts";
import {
  calculationPage,
  certificatePage,
  hostile,
  jointPage,
  longId,
  personPage,
  weldLogPage,
} from "./sample-pages.ts";
import { pressureFigure } from "./sample-figures.ts";

const fingerprint = "3c1d90ae77b25f0416e8a2c94d7b630f58e1b7c20a94d36f71be05c8924ad17e";
const groups = fingerprint.match(/.{4}/g) ?? [];

const sections = [
  { number: "3", title: "Design data and calculations", opening: "section/3.html" },
  { number: "7", title: "Welding", opening: "section/7.html" },
  { number: "6", title: "Materials", opening: "section/6.html" },
] as const;

const pages: readonly Page[] = [calculationPage, jointPage, weldLogPage, personPage, certificatePage];

function openingOf(section: (typeof sections)[number], index: number): Page {
  return {
    url: section.opening,
    number: section.number,
    title: section.title,
    under: [`Section ${section.number} of the sample.`],
    section: index,
    opening: true,
    blocks: [
      {
        type: "contents",
        entries: pages
          .filter((page) => page.section === index)
          .map((page) => ({ number: page.number ?? "", title: page.title, to: { page: page.url }, level: 1 })),
      },
    ],
  };
}

const finding = (anchor: string, severity: FindingItem["severity"], message: string): FindingItem => ({
  anchor,
  severity,
  message: [message],
  rows: [
    { label: "at", value: [{ type: "code", text: "weld-log/seams.json:41:7" }] },
    { label: "why", value: [`The last qualification ended on 2026-05-31. ${hostile}`] },
    { label: "hint", value: ["Add the prolongation, or correct the welding date."] },
    {
      label: "waiting",
      value: ["1 outcome: ", { type: "link", to: { page: "joint/r-C2.html", anchor: "welder" }, text: "joint C2" }],
    },
  ],
  notes: [{ lead: "Basis", text: ["EN ISO 9606-1, period of validity (from memory)"] }, { text: ["New since P2"] }],
});

const findingsPage: Page = {
  url: "findings.html",
  number: "2.1",
  title: "Findings, by who must act",
  under: ["Four findings, one of each severity."],
  section: null,
  blocks: [
    { type: "heading", level: 2, number: "2.1.1", text: "Maker, welding coordination" },
    {
      type: "findings",
      findings: [
        finding("f-w07", "nonconformity", "Welder W07 was not qualified on 2026-06-09."),
        finding("f-n2", "gap", "Tester N2 has no vision test for 2026."),
      ],
    },
    { type: "heading", level: 2, number: "2.1.2", text: "Supplier" },
    {
      type: "findings",
      findings: [finding("f-sulphur", "query", `Sulphur of heat 84713: ${longId}`), finding("f-note", "note", hostile)],
    },
  ],
};

function contents(): readonly ContentsEntry[] {
  return sections.flatMap((section, index) => [
    { number: section.number, title: section.title, to: { page: section.opening }, level: 1 as const },
    ...pages
      .filter((page) => page.section === index)
      .map((page) => ({ number: page.number ?? "", title: page.title, to: { page: page.url }, level: 2 as const })),
  ]);
}

const frontBlocks: readonly Block[] = [
  { type: "heading", level: 2, text: "Exceptions", anchor: "exceptions" },
  {
    type: "list",
    ordered: true,
    items: [
      [
        { type: "strong", text: "Deviation DV-01, nozzle N4 stands 4 mm off." },
        " The measurement failed; the client accepts it.",
      ],
      [
        { type: "strong", text: "Waiver WV-01, no calibration of TH-02." },
        " The temperature is ",
        { type: "em", text: "not judged" },
        ".",
      ],
    ],
    notes: [{ lead: "DV-01", text: ["signed by client, 6 July 2026; covers one finding; no end."] }],
  },
  { type: "heading", level: 2, text: "The vessel and its limits" },
  {
    type: "facts",
    facts: [
      { label: "Maximum allowable pressure PS", value: ["11 bar"] },
      { label: "Allowable temperature TS", value: ["−10 °C to 60 °C"] },
      { label: "Volume V", value: ["≥ 2500 l, Ø 1200 × 8 mm, coated 160 µm"] },
      { label: "Maker", value: ["Brackenholt Vessel Works"], gap: true },
      { label: "Client", value: ["Oddmere Dairy"] },
    ],
  },
  { type: "figure", number: "0.1", caption: ["The test in one picture."], figure: pressureFigure },
  { type: "heading", level: 2, text: "Signatures" },
  {
    type: "signatures",
    rows: [
      { for: "Maker, quality", that: "the records are complete", date: "2026-07-15", by: "signed electronically" },
      { for: "Oddmere Dairy", that: "the book is received, with the reservations written here", date: "", by: "" },
    ],
  },
  { type: "heading", level: 2, text: "How to verify this copy" },
  {
    type: "list",
    ordered: true,
    items: [["Compare the fingerprint."], ["Run ", { type: "code", text: "sha256sum -c hashes.sha256" }, "."]],
  },
  { type: "fingerprint", label: "Evidence fingerprint (SHA-256)", groups },
  { type: "heading", level: 2, text: "Read this first" },
  {
    type: "paragraph",
    text: ["The checks compare what was recorded, within itself and with the loaded rules."],
    notes: [{ text: ["Fatigue, wind and lifting are outside the loaded rules."] }],
  },
  { type: "heading", level: 2, text: "Contents" },
  { type: "contents", entries: contents() },
];

/** A whole small publication with every block kind and awkward content in it; the data are invented. */
export function samplePublication(interim: boolean): Publication {
  const front: Page = {
    url: "index.html",
    kindLine: "Manufacturing data book",
    title: "Hot water accumulator, 2500 l",
    under: ["Serial BH211-02, made in 2026 by Brackenholt Vessel Works for Oddmere Dairy."],
    section: null,
    blocks: frontBlocks,
  };
  const bodies = sections.flatMap((section, index) => [
    openingOf(section, index),
    ...pages.filter((page) => page.section === index),
  ]);
  const list: Page = {
    url: "records.html",
    title: "All records",
    section: null,
    screenOnly: true,
    blocks: [
      {
        type: "list",
        ordered: false,
        items: pages.map((page) => [{ type: "link", to: { page: page.url }, text: page.title }]),
      },
    ],
  };
  return {
    number: "BH211-02",
    title: "Hot water accumulator, 2500 l",
    state: interim ? "revision P3, interim" : "revision 0, final",
    interim,
    ...(interim && { interimLine: "Interim issue P3, not for acceptance. Evidence recorded up to 18 June 2026." }),
    demonstration: true,
    fingerprint,
    issueDate: "2026-07-17",
    dataCutOff: interim ? "2026-06-18" : "2026-07-16",
    maker: "Brackenholt Vessel Works",
    client: "Oddmere Dairy",
    language: "en",
    sections,
    pages: [front, findingsPage, ...bodies, list],
    originals: [
      {
        id: "CRT-003",
        title: "Inspection certificate 3.1, heat 84713",
        path: "files/materials/crt-003.pdf",
        sha256: "b30d6f710c5e88a4b30d6f710c5e88a4b30d6f710c5e88a4b30d6f710c5e88a4",
        pages: 2,
        mediaType: "application/pdf",
        page: { page: "material-certificate/r-CRT-003.html", anchor: "original" },
      },
    ],
    tool: "databook 0.1.0",
  };
}

import type { BodyCertificate, Declaration } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { article, fields, paragraph } from "../paper/blocks.ts";
import { roundStamp, signatures } from "../paper/marks.ts";
import { newSheet, right, type Paper } from "../paper/paper.ts";
import { listed, printed } from "./original.ts";

type CertificateType = NonNullable<BodyCertificate["type"]>;

const directive = "Directive 2014/68/EU";
const stamping = "may be stamped beside the CE marking.";
const conforms = `It conforms to the requirements of ${directive} that apply to it.`;

/** Title of a certificate, and what it states of the product. */
const wordings: Readonly<Record<CertificateType, readonly [title: string, (type: string, number: string) => string]>> =
  {
    "EU-type examination": [
      "EU-type examination certificate, module B, production type",
      () =>
        `The technical documentation and the production type were examined. The type meets the essential safety requirements of ${directive} that apply to it.`,
    ],
    "design examination": [
      "EU design examination certificate",
      () =>
        `The technical documentation was examined. The design meets the essential safety requirements of ${directive}.`,
    ],
    "product verification": [
      "Certificate of conformity, module F",
      (type, number) =>
        `The vessel was examined and tested. It conforms to the type described in certificate ${type} and to the requirements of ${directive} that apply to it. The number ${number} ${stamping}`,
    ],
    "unit verification": [
      "Certificate of conformity, module G",
      (_, number) =>
        `Design, manufacture and final assessment of this one product were examined, and it was tested. ${conforms} The number ${number} ${stamping}`,
    ],
    "quality system approval": [
      "Approval of a quality system",
      () => `The quality system was assessed and meets the requirements of ${directive} for the products named.`,
    ],
  };

/** A certificate of the inspection body. */
export function drawBodyCertificate(paper: Paper, facts: Facts, record: BodyCertificate): void {
  const { equipment } = facts;
  const body = record.body ?? facts.body;
  const [title, statement] = wordings[record.type ?? "unit verification"];
  const final = record.serial !== undefined;
  const examined = facts.all("body-certificate").find(({ type }) => type === "EU-type examination");
  const model = facts.all("nameplate")[0]?.type ?? "";
  const drawings = (record.drawings ?? []).map((one) => one.replace("@", " "));
  const sheet = newSheet(paper, title);
  fields(sheet, [
    ["Certificate", printed(record.number)],
    ["Date", printed(record.date)],
    ["Maker", facts.organisation(facts.maker).name],
    ["Product", `${printed(equipment.name)} ${model}${final ? `, serial ${record.serial}` : ""}`],
    ["PS", printed(record.maximumAllowablePressure)],
    ["TS", `${printed(record.minimumAllowableTemperature)} to ${printed(record.maximumAllowableTemperature)}`],
    ["V", printed(record.volume)],
    ["Fluid", `${printed(equipment.fluid?.name).replace("compressed ", "")}, group ${printed(record.fluidGroup)}`],
    ["Category, modules", `${printed(record.category)}, ${printed(record.module)}`],
    ["Drawings", drawings.length > 6 ? `${drawings.length}, named below` : listed(drawings)],
    ...(final
      ? ([
          ["Test pressure, date", `${printed(record.testPressure)}, ${printed(record.testDate)}`],
          ["Year of manufacture", printed(record.year)],
        ] as const)
      : ([
          ["Valid to", printed(record.validTo)],
          [
            "Designed to",
            `${printed(equipment.designStandard?.standard)}:${printed(equipment.designStandard?.edition)}`,
          ],
        ] as const)),
  ]);
  if (drawings.length > 6) paragraph(sheet, `Drawings: ${listed(drawings)}.`);
  paragraph(sheet, statement(printed(examined?.number), printed(record.bodyNumber)), 10);
  signatures(sheet, [{ role: "for the body", name: facts.name(record.signatory), date: printed(record.date) }]);
  roundStamp(sheet, facts.stamp(body).replace("\n", "\nINSPECTION\n"), right - 60, sheet.y + 30);
}

/** The declaration of conformity. */
export function drawDeclaration(paper: Paper, facts: Facts, declaration: Declaration): void {
  const certificates = (declaration.bodyCertificates ?? []).map((id) =>
    printed(facts.all("body-certificate").find((one) => one.id === id)?.number),
  );
  const sheet = newSheet(paper, "EU declaration of conformity");
  paragraph(
    sheet,
    `${printed(declaration.makerName)}, ${printed(declaration.makerAddress)}, declares under its sole responsibility that the pressure equipment`,
    10,
  );
  paragraph(sheet, printed(declaration.description), 12);
  paragraph(
    sheet,
    `conforms to ${listed(declaration.legislation)}. Harmonised standards applied: ${(declaration.standards ?? []).map((one) => `${one.standard}:${printed(one.edition)}`).join(", ")}.`,
    10,
  );
  fields(sheet, [
    ["Number", printed(declaration.number)],
    ["Serial, year", `${printed(declaration.serial)}, ${printed(declaration.year)}`],
    ["PS", printed(declaration.maximumAllowablePressure)],
    [
      "TS",
      `${printed(declaration.minimumAllowableTemperature)} to ${printed(declaration.maximumAllowableTemperature)}`,
    ],
    ["V", printed(declaration.volume)],
    ["Test pressure, date", `${printed(declaration.testPressure)}, ${printed(declaration.testDate)}`],
    ["Category, modules", `${printed(declaration.category)}, ${printed(declaration.module)}`],
    ["Body", `${printed(declaration.bodyNumber)}, ${printed(declaration.bodyName)}`],
    ["Certificates", listed(certificates)],
    ["Place, date", `${printed(declaration.place)}, ${printed(declaration.date)}`],
  ]);
  signatures(sheet, [
    {
      role: printed(declaration.function),
      name: facts.name(declaration.signatory),
      date: printed(declaration.date),
    },
  ]);
  article(sheet, "Note", "A demonstration. No such vessel, maker or body exists, and nothing is declared.");
}

import type { BodyCertificate } from "../../../src/generated/records.ts";
import { article, fields, paragraph } from "../../paper/blocks.ts";
import { roundStamp, signatures } from "../../paper/marks.ts";
import { newSheet, right, type Paper } from "../../paper/paper.ts";
import { bodyCertificates, declaration } from "../facts/legal.ts";
import { nameOf, organisationOf } from "../facts/people.ts";
import { printed } from "./original.ts";

/** A certificate of the inspection body. */
export function drawCertificate(paper: Paper, record: BodyCertificate): void {
  const final = record.type === "product verification";
  const sheet = newSheet(
    paper,
    final ? "Certificate of conformity, module F" : "EU-type examination certificate, module B, production type",
  );
  fields(sheet, [
    ["Certificate", printed(record.number)],
    ["Date", printed(record.date)],
    ["Maker", organisationOf("TARNEQUILL").name],
    ["Product", `compressed-air receiver AR 3000-11${final ? `, serial ${printed(record.serial)}` : ""}`],
    ["PS", printed(record.maximumAllowablePressure)],
    ["TS", `${printed(record.minimumAllowableTemperature)} to ${printed(record.maximumAllowableTemperature)}`],
    ["V", printed(record.volume)],
    ["Fluid", `air, group ${printed(record.fluidGroup)}`],
    ["Category, modules", `${printed(record.category)}, ${printed(record.module)}`],
    ["Drawings", (record.drawings ?? []).map((one) => one.replace("@", " ")).join(", ")],
    ...(final
      ? ([
          ["Test pressure, date", `${printed(record.testPressure)}, ${printed(record.testDate)}`],
          ["Year of manufacture", printed(record.year)],
        ] as const)
      : ([
          ["Valid to", printed(record.validTo)],
          ["Designed to", "EN 13445:2021"],
        ] as const)),
  ]);
  paragraph(
    sheet,
    final
      ? "The vessel was examined and tested. It conforms to the type described in certificate PQ-B-26-0041 and to the requirements of Directive 2014/68/EU that apply to it. The number 0000 may be stamped beside the CE marking."
      : "The technical documentation and the production type were examined. The type meets the essential safety requirements of Directive 2014/68/EU that apply to it.",
    10,
  );
  signatures(sheet, [{ role: "for the body", name: nameOf(printed(record.signatory)), date: printed(record.date) }]);
  roundStamp(sheet, "PENQUILLITH\nINSPECTION\n0000", right - 60, sheet.y + 30);
}

/** The declaration of conformity. */
export function drawDeclaration(paper: Paper): void {
  const sheet = newSheet(paper, "EU declaration of conformity");
  paragraph(
    sheet,
    `${printed(declaration.makerName)}, ${printed(declaration.makerAddress)}, declares under its sole responsibility that the pressure equipment`,
    10,
  );
  paragraph(sheet, printed(declaration.description), 12);
  paragraph(
    sheet,
    `conforms to ${(declaration.legislation ?? []).join(", ")}. Harmonised standards applied: ${(declaration.standards ?? []).map((one) => `${one.standard}:${printed(one.edition)}`).join(", ")}.`,
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
    ["Certificates", bodyCertificates.map(({ number }) => printed(number)).join(", ")],
    ["Place, date", `${printed(declaration.place)}, ${printed(declaration.date)}`],
  ]);
  signatures(sheet, [
    {
      role: printed(declaration.function),
      name: nameOf(printed(declaration.signatory)),
      date: printed(declaration.date),
    },
  ]);
  article(sheet, "Note", "A demonstration. No such vessel, maker or body exists, and nothing is declared.");
}

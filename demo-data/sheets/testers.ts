import type { NdtPersonnel } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, note, type Paper } from "../paper/paper.ts";
import { printed } from "./original.ts";

/** The certificate of a tester. */
export function drawTester(paper: Paper, facts: Facts, one: NdtPersonnel): void {
  const sheet = newSheet(paper, "Certificate of testing personnel");
  note(paper, "ndt-personnel", one.id);
  fields(sheet, [
    ["Certificate", printed(one.certificate)],
    ["Standard", `${printed(one.standard?.standard)}:${printed(one.standard?.edition)}`],
    ["Holder, mark", `${facts.name(one.person)}, ${one.person}`],
    ["Method, level", `${one.method}, level ${printed(one.level)}`],
    ["Sector", printed(one.sector)],
    ["Valid", `${printed(one.issued)} to ${printed(one.validTo)}`],
    ["Near vision tested", printed(one.visionTest)],
    ["Authorised by the employer", printed(one.employerAuthorisation)],
  ]);
  if (one.thirdPartyApproval === true)
    paragraph(
      sheet,
      "The holder is approved for tests of permanent joints of pressure equipment of categories III and IV.",
    );
  signatures(sheet, [
    {
      role: "for the body",
      name: facts.last("inspection body"),
      date: printed(one.issued),
      stamp: facts.stamp(one.body ?? facts.body),
    },
  ]);
}

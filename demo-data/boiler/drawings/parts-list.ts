import type { Part } from "../../generated/records.ts";
import type { Sheet } from "../../paper/paper.ts";
import { table } from "../../paper/tables.ts";
import { printed } from "../../sheets/original.ts";

const bare = (value: string | undefined) => value?.replace(" mm", "");

/** Diameter, thickness and length of a part, as far as it has them. */
export function sizeOfPart({ outsideDiameter, nominalThickness, length, role }: Part): string {
  const round = outsideDiameter === undefined ? undefined : `Ø ${printed(bare(outsideDiameter))}`;
  const wall = role === "stay" ? `bar ${printed(bare(nominalThickness))}` : bare(nominalThickness);
  return [round, wall, bare(length)].filter((one) => one !== undefined).join(" × ");
}

/** The parts list of a drawing. */
export function partsList(sheet: Sheet, parts: readonly Part[], size = 8): Sheet {
  return table(
    sheet,
    [
      { title: "Part", share: 7 },
      { title: "Name", share: 44 },
      { title: "Qty", share: 6, align: "right" },
      { title: "Material", share: 34 },
      { title: "Size, mm", share: 26 },
      { title: "Cert.", share: 8 },
    ],
    parts.map((part) => [
      part.id,
      printed(part.name),
      printed(part.quantity),
      `${printed(part.material?.grade)}, ${printed(part.material?.standard)}`,
      sizeOfPart(part),
      printed(part.requiredCertificateType),
    ]),
    size,
  );
}

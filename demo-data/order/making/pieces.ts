import type { PieceMark } from "../../generated/records.ts";

/** Day on which the pieces of the order were cut. */
const cutOn = "2026-05-19";

interface Piece {
  readonly id: string;
  readonly part: string;
  readonly row: string;
  readonly from: string;
  readonly more?: Partial<PieceMark>;
}

/** A piece as stamped and cut; `stamp` is what the marks of the vessel begin with. */
export const pieceOf =
  (stamp: string) =>
  ({ id, part, row, from, more }: Piece): PieceMark => ({
    id,
    part,
    mark: `${stamp}/${part.slice(1).replace(/^0/, "")}-A`,
    certificateRow: row,
    pieceNumber: from,
    cut: cutOn,
    pieces: 1,
    transfers: [
      {
        from,
        to: `${stamp}/${part.slice(1).replace(/^0/, "")}-A`,
        method: "hard stamp",
        by: "S1",
        date: "2026-05-18",
        witness: "D2",
      },
    ],
    ...more,
  });

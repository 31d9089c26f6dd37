import type { Procedure } from "../../generated/records.ts";

type Type = Procedure["type"];

/** What a procedure says, for its paper; the record states only that it exists and is approved. */
export interface ProcedureText {
  readonly record: Procedure;
  readonly paragraphs: readonly (readonly [string, string])[];
}

/** Who wrote and approved a procedure, and when. */
export interface Approval {
  readonly prepared: string;
  readonly checked?: string;
  readonly approved: string;
  readonly date: string;
  readonly on: string;
  readonly reason: string;
}

/** A procedure with one revision, the one in force. */
export const procedure = (
  id: string,
  type: Type,
  number: string,
  title: string,
  revision: string,
  { prepared, checked, approved, date, on, reason }: Approval,
  method?: Procedure["method"],
): Procedure => ({
  id,
  type,
  ...(method !== undefined && { method }),
  title,
  number,
  revisions: [
    {
      revision,
      date,
      status: "for-construction",
      reason,
      preparedBy: prepared,
      ...(checked !== undefined && { checkedBy: checked }),
      approvedBy: approved,
      approved: on,
      sheets: 1,
    },
  ],
});

import { commonPractice, fromMemory } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { date, list, optional, text, thing } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";

/** A late certificate is late for every piece of it: these objections are the certificate's, one for all its pieces. */
const transferOrder = rule({
  id: "mark-transferred",
  title: "A mark is transferred after the certificate was issued",
  basis: fromMemory("EN ISO 3834-2", "2021", "identification and traceability"),
  kind: "piece-mark",
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    transfers: list(thing("transfers[]", { date: date("date"), by: optional(text("by")) })),
    certificate: thing("certificateRow.record", { issued: date("issued") }),
  },
  *check({ transfers, certificate }, mark) {
    const [early, ...more] = transfers.filter((transfer) => canPrecede(certificate.issued, transfer.date) === "no");
    if (early === undefined) return;
    const days = [early, ...more].map((transfer) => transfer.date.text).join(", ");
    yield {
      at: [early, "date"],
      on: certificate,
      message: `the mark of piece ${mark.name} was transferred on ${days}, before its certificate was issued`,
      why: `certificate ${certificate.$.name} is of ${certificate.issued.text}: nobody could compare the two`,
      hint: "correct the date, or record an order exception with the conditional release",
      related: [{ at: [certificate, "issued"], message: `issued ${certificate.issued.text}` }],
    };
  },
  examples: [
    {
      name: "same day",
      given: { transfers: [{ date: "2026-03-02" }], certificate: { issued: "2026-03-02" } },
      objections: [],
    },
    {
      name: "before",
      given: {
        transfers: [{ date: "2026-03-01" }, { date: "2026-03-03" }],
        certificate: { $: "CRT-1", issued: "2026-03-02" },
      },
      objections: ["the mark of piece X-01 was transferred on 2026-03-01, before its certificate was issued"],
    },
  ],
});

const cutOrder = rule({
  id: "cut-after-receipt",
  title: "A piece is cut after its certificate was received",
  basis: commonPractice("a certificate is there before its material is used"),
  kind: "piece-mark",
  severity: "query",
  owner: "shop",
  inputs: { cut: date("cut"), certificate: thing("certificateRow.record", { received: date("received") }) },
  *check({ cut, certificate }, mark) {
    if (canPrecede(certificate.received, cut) === "no")
      yield {
        at: "cut",
        on: certificate,
        message: `${mark.name} is cut ${cut.text}, but its certificate received ${certificate.received.text}`,
        why: `certificate ${certificate.$.name} came after its material was used`,
        hint: "compare both with the originals and correct the wrong one; if it was so and was allowed, record an order exception",
        related: [{ at: [certificate, "received"], message: `its certificate received ${certificate.received.text}` }],
      };
  },
  examples: [
    { name: "the same day", given: { cut: "2026-06-01", certificate: { received: "2026-06-01" } }, objections: [] },
    {
      name: "the day before",
      given: { cut: "2026-05-31", certificate: { received: "2026-06-01" } },
      objections: ["X-01 is cut 2026-05-31, but its certificate received 2026-06-01"],
    },
  ],
});

/** Certificate, then its material. */
export const materialDates: readonly Rule[] = [transferOrder, cutOrder];

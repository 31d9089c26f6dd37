import { ownChoice } from "../../model/basis.ts";
import { count, optional, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** A certificate of four pages of which three were scanned is no certificate. */
export const certificatePages = rule({
  id: "certificate-pages",
  title: "A certificate was scanned with all its pages",
  basis: ownChoice("what stands on a page that is missing was read by nobody"),
  kind: "material-certificate",
  // Without a count or an original nothing was compared: that does not pass, it does not apply.
  when: [
    { path: "pages", exists: true },
    { path: "source", exists: true },
  ],
  severity: "nonconformity",
  owner: "document control",
  inputs: {
    pages: optional(count("pages")),
    original: optional(thing("source.original", { pages: optional(count("pages")) })),
  },
  *check({ pages, original }, certificate) {
    if (pages === undefined || original?.pages === undefined || original.pages >= pages) return;
    yield {
      at: "pages",
      accuses: [],
      message: `certificate ${certificate.name} has ${pages} pages, its original ${original.$.name} only ${original.pages}`,
      why: "a page is missing, or the number of pages was read wrongly",
      hint: "ask for the missing page and scan it, or correct the number",
      related: [{ at: [original, "pages"], message: `${original.pages} pages here` }],
    };
  },
  examples: [
    { name: "all scanned", given: { pages: 2, original: { pages: 2 } }, objections: [] },
    { name: "bound with others", given: { pages: 2, original: { pages: 7 } }, objections: [] },
    { name: "not scanned yet", given: { pages: 2 }, objections: [] },
    {
      name: "one page missing",
      given: { pages: 4, original: { $: "ORG-1", pages: 3 } },
      objections: ["certificate X-01 has 4 pages, its original ORG-1 only 3"],
    },
  ],
});

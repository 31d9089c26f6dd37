import { expect, test } from "vitest";
import type { Block, Mark } from "../../../src/publish/blocks.ts";
import { newFlow } from "../../../src/publish/pdf/flow.ts";
import { openFonts } from "../../../src/publish/pdf/fonts.ts";
import { chainPieces, judgedPieces } from "../../../src/publish/pdf/judged.ts";
import { upright } from "../../../src/publish/pdf/measures.ts";
import type { PageSetter } from "../../../src/publish/pdf/paragraphs.ts";

const fonts = openFonts();
const setter: PageSetter = { fonts, known: () => true, copied: () => true, destOf: (anchor) => anchor };

type Chain = Extract<Block, { type: "chain" }>;
const chain = (links: number, onPaper: boolean, odd: Mark = "passed"): Chain => ({
  type: "chain",
  label: "Evidence for joint C1",
  links: Array.from({ length: links }, (_, index) => ({
    what: `Link ${index}`,
    mark: index === 1 ? odd : "passed",
    text: [["What it rests on. ".repeat(8)]],
    notes: [{ lead: "Checked", text: ["A weld is made after it was fitted. 1 of 1 passed."] }],
    anchor: `link-${index}`,
  })),
  count: "all links",
  ...(onPaper && { onPaper: ["What is checked at each link stands in section 7."] }),
});

/** Sheets on which the links of a chain begin, after a page that fills most of its sheet. */
function sheetsOf(block: Chain): readonly number[] {
  const flow = newFlow(fonts, () => undefined);
  flow.begin("page.html", "");
  flow.add([{ height: (upright.bottom - upright.top) * 0.6, draw: () => undefined }]);
  flow.add(chainPieces(setter, block));
  flow.end();
  return block.links.map(({ anchor = "" }) => flow.places.get(anchor)?.sheet ?? -1);
}

test("a chain that fits on a sheet is walked on one page; a longer one is parted", () => {
  expect(new Set(sheetsOf(chain(9, true)))).toEqual(new Set([1]));
  expect(new Set(sheetsOf(chain(40, true))).size).toBeGreaterThan(2);
});

test("what the section says once is left out at sound links, and stands at any other", () => {
  const noted = (block: Chain) => chainPieces(setter, block).filter(({ notes }) => notes !== undefined).length;
  expect(noted(chain(6, false))).toBe(6);
  expect(noted(chain(6, true))).toBe(0);
  for (const odd of ["failed", "not judged", "not due"] as const) expect(noted(chain(6, true, odd)), odd).toBe(1);
});

test("a list that is summed up takes the room of its sentence", () => {
  const items = Array.from({ length: 12 }, () => ({
    text: ["A joint is welded after it was fitted."],
    mark: "passed" as const,
  }));
  const height = (block: Extract<Block, { type: "judged" }>) =>
    judgedPieces(setter, block).reduce((sum, piece) => sum + piece.height, 0);
  const long = height({ type: "judged", items });
  expect(height({ type: "judged", items, onPaper: ["12 checks, all passed."] })).toBeLessThan(long / 6);
});

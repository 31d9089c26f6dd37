import { judge } from "../../src/judge/judge.ts";
import { smallBook } from "../support/small-book.ts";
import { definitions, sound } from "../judge/sound-book.ts";
const many = { ...definitions, rules: [1, 2, 3, 4].flatMap((round) => definitions.rules.map((rule) => ({ ...rule, id: `${rule.id}-${round}` }))) };
const names = Array.from({ length: 2000 }, (_, i) => i);
const blocks = Array.from({ length: 20 }, (_, i) => i);
const all = (list: readonly number[], name: (i: number) => string, value: (i: number) => unknown) => Object.fromEntries(list.map((i) => [name(i), value(i)])) as never;
const book = smallBook({ records: { ...sound,
 part: all(names, (i) => `P${i}`, (i) => ({ ...sound["part"]?.["SHELL"], heat: `CRT${Math.floor(i/100)}X#H${i}` })),
 certificate: all(blocks, (i) => `CRT${i}X`, (b) => ({ issued: "2026-02-01", rows: names.slice(b*100,b*100+100).map((i)=>({heat:`H${i}`, strength:"250 MPa", thickness:"8 mm"})) })),
 joint: all(names, (i) => `J${i}`, (i) => ({ part: `P${i}`, welder: i%2===0?"WAB":"WCD", process: i%2===0?"135":"141", welded: "2026-03-10" })),
 report: all(blocks, (i) => `VT${i}X`, (b) => ({ method: "VT", date: "2026-03-20", rows: names.slice(b*100,b*100+100).map((i)=>({joint:`J${i}`, result:"ok"})) })),
 "calculation-sheet": all(names, (i) => `CS${i}`, (i) => ({ ...sound["calculation-sheet"]?.["CSA"], subject: `part:P${i}` })),
}});
for (let k = 0; k < 3; k++) { const t = performance.now(); const j = judge(book, many); console.log(performance.now()-t, j.outcomes.length, j.findings.length, j.counts); }

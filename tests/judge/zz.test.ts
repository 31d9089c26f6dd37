import { test } from "vitest";
import { judgeBook, readBook } from "../../src/pipeline.ts";
for (const dir of ["demo-data/air-receiver/book", "demo-data/air-receiver-interim/book"]) test(dir, () => {
const read = readBook(dir);
const t = performance.now();
const judged = judgeBook(read);
console.log(performance.now() - t, judged.counts, judged.outcomes.length);
for (const f of judged.findings.slice(0, 40)) console.log(f.severity, f.key, "\n   ", f.message, "\n   ", f.why.slice(0,200), f.waiting.length);
for (const o of judged.outcomes.filter(o => o.verdict === "not judged" && o.because?.type !== "not due").slice(0,20)) console.log(JSON.stringify(o));
});

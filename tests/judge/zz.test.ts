import { test } from "vitest";
import { judgeBook, readBook } from "../../src/pipeline.ts";
import { demoBook, judgeChanged, newRoots } from "../support/demo-book.ts";
const sound = judgeBook(readBook(demoBook));
test("x", () => {
for (const remove of ["heat-treatment:HT-01","nonconformity-report:NCR-01","production-test:TP-01","ndt-personnel:NC-N1-VT","welder-qualification:WQ-07-1","welder-qualification:WQ-03-3","welding-procedure:WPS-04","welding-procedure:WPS-03","ndt-report:RT-05","ndt-report:VT-03"]) {
  const { judged } = judgeChanged(demoBook, [{ remove }]);
  if (judged) console.log(remove, newRoots(judged, sound).map(f => `\n   ${f.severity} ${f.key}: ${f.message} [${f.waiting.length}] because ${f.why.slice(0,120)} accuses ${f.accuses.length}`).join(""));
}});

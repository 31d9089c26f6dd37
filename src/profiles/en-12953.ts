import { excerptSeen, fromMemory, ownChoice } from "../model/basis.ts";
import { family } from "./family.ts";
import { usual } from "./shared.ts";

const testing = (part: string) => excerptSeen("EN 12953-5:2020, as repeated by a second hand", part);

/** Shell boilers under the Directive. */
export const en12953 = family("ped-en-12953", "Pressure Equipment Directive with EN 12953", {
  ...usual,
  designStandards: { value: "EN 12953", basis: ownChoice("the family this profile states the parameters of") },
  visualTesterCertificate: {
    value: "not required",
    basis: testing("5.2.2: visual testing needs no certified personnel"),
  },
  surfaceTesterLevelSupervised: {
    value: "1",
    basis: testing("5.2.2: magnetic and penetrant testing under direct supervision of a level 2"),
  },
  testerLevelSupervised: {
    value: "2",
    basis: fromMemory(
      "EN 12953-5",
      undefined,
      "level 1 under supervision is allowed of magnetic and penetrant tests alone",
    ),
  },
  radiographicClass: { value: "A", basis: testing("5.5.4.3.1: class A of EN ISO 17636") },
  laterValveExcess: {
    value: "3 %",
    basis: fromMemory(
      "ASME BPVC Section I",
      undefined,
      "valves after the first up to 3 % higher; taken for shell boilers",
    ),
  },
  highWaterLock: {
    value: "not required",
    basis: fromMemory("EN 12953-6", undefined, "a limiter of high water may act on the feed and start again"),
  },
});

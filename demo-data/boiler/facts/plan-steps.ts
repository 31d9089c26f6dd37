import type { Joint } from "../../generated/records.ts";
import { of, type Step } from "../../shop/plan.ts";
import { certificates } from "./certificates.ts";
import { fittings } from "./fittings.ts";
import { instruments } from "./instruments.ts";
import { joints } from "./joints.ts";
import { millApprovals, pieceMarks } from "./marks.ts";
import { parts } from "./parts.ts";
import { procedures } from "./shop-procedures.ts";
import { tubeEndGroups } from "./tube-ends.ts";

export { of, type Step };

const links = (kind: string, records: readonly { readonly id: string }[]): string[] =>
  records.map(({ id }) => `${kind}:${id}`);

/** Joints a step made: their weld logs hang on them. */
export const jointsWhere = (chosen: (joint: Joint) => boolean): string[] => links("joint", joints.filter(chosen));

export const parted = (...roles: string[]): string[] =>
  links(
    "part",
    parts.filter(({ role }) => role !== undefined && roles.includes(role)),
  );

/** The gauge of the valve maker comes with his valves. */
export const shopInstruments = links(
  "instrument",
  instruments.filter(({ id }) => id !== "PG-07"),
);
export const allProcedures = links(
  "procedure",
  procedures.map(({ record }) => record),
);

export const allTubeEnds = links("tube-end-group", tubeEndGroups);

const isTried = ({ functionTests = [] }: (typeof fittings)[number]) => functionTests.length > 0;
/** Fittings that are tried under steam, and those that are only looked at. */
export const fittingsTried = links("fitting", fittings.filter(isTried));
export const fittingsNotTried = links(
  "fitting",
  fittings.filter((one) => !isTried(one)),
);

/** Certificates received on some days, with the approvals of their mills. */
export const receivedOn = (...days: string[]): string[] => {
  const arrived = certificates.filter(({ received = "" }) => days.includes(received));
  return [
    ...links("material-certificate", arrived),
    ...links(
      "mill-approval",
      millApprovals.filter(({ mill }) => arrived.some((one) => one.mill === mill && one.type === "3.1")),
    ),
  ];
};

export const cutOn = (...days: string[]): string[] =>
  links(
    "piece-mark",
    pieceMarks.filter(({ cut = "" }) => days.includes(cut)),
  );

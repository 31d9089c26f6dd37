export { evidenceFingerprint, hashLines, sha256 } from "../../model/fingerprint.ts";
export { IssueError } from "./issue-error.ts";
export type { Content, IssueFile } from "./hash-list.ts";
export { withheldName, type Marker } from "./marker.ts";
export { verifyIssue, type Verification } from "./verify.ts";
export { checkTarget, refuseSecond, refuseShelves, seriesOf, writeIssue, type Target, type Written } from "./write.ts";

/** Who must act on a finding. A closed list: a definition that names anyone else is a fault of the program. */
export const owners = [
  "authorised signatory",
  "design",
  "document control",
  "inspection body",
  "purchasing",
  "quality",
  "shop",
  "supplier",
  "testing",
  "welding coordination",
] as const;

export type Owner = (typeof owners)[number];

/** Points of manufacture at which evidence becomes due, in their usual order; a book lists those it uses in its own. */
export const milestones = [
  "order",
  "design-approved",
  "material-received",
  "cutting",
  "welding",
  "testing-complete",
  "pressure-test",
  "final-inspection",
  "release",
] as const;

/** "now": due whatever is reached. */
export type Milestone = (typeof milestones)[number] | "now";

export const isOwner = (text: string): text is Owner => (owners as readonly string[]).includes(text);

export const isMilestone = (text: string): text is Milestone =>
  text === "now" || (milestones as readonly string[]).includes(text);

/** Who works elsewhere: he is asked, and the book's maker enters what he answers. */
export const isElsewhere = (owner: Owner): boolean => owner === "supplier" || owner === "inspection body";

import type { MilestoneDay } from "../model/milestone-days.ts";
import type { OwedItem } from "./items.ts";

/** "testing-complete" as people say it. */
export const milestoneWords = (name: string): string => name.replaceAll("-", " ");

/** "welding, planned for 2026-06-19"; "cutting, reached on 2026-05-19"; "release, no day planned". */
export function milestoneSentence({ name, day, reached }: MilestoneDay): string {
  const said = milestoneWords(name);
  if (day === undefined) return `${said}, ${reached ? "reached" : "no day planned"}`;
  return `${said}, ${reached ? "reached on" : "planned for"} ${day}`;
}

/** When it is owed: a heading over what is owed then. */
export function whenWords({ milestone, standing }: OwedItem): string {
  if (milestone === null) return "at once";
  const late = standing === "due" || standing === "open";
  return milestone.reached || !late ? milestoneSentence(milestone) : `${milestoneWords(milestone.name)}: due`;
}

/** "read it from ORG-CRT-012, page 1 (files/crt-012.pdf); the paper is of Greyvault Plate Mill": "" where nothing is named. */
export function paperWords({ original, paperOf }: OwedItem): string {
  const page = original?.page == null ? "" : `, page ${original.page}`;
  const path = original === null || original.path === "" ? "" : ` (${original.path})`;
  return [
    ...(original === null ? [] : [`original ${original.id}${page}${path}`]),
    ...(paperOf.length === 0 ? [] : [`paper of ${paperOf.map(({ name }) => name).join(", ")}`]),
  ].join("; ");
}

/** "joint C2", "part 1, Shell course 1": the thing and its title. */
export const thingInFull = ({ thing, title }: OwedItem): string => (title === "" ? thing : `${thing}, ${title}`);

/** "or adopt "Wall of a shell" of part P01 by 7K3M-Q2PX-9D4T: required thickness 4.63 mm". */
export const adoptWords = ({ of, digest, said }: OwedItem["adoptable"][number]): string =>
  `or adopt ${of} by ${digest}: ${said}`;

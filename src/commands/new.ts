import { basename, resolve } from "node:path";
import { FolderRefused, refuseTaken, writeNewFolder, type Contents } from "../begin/new-folder.ts";
import { standingAway } from "../begin/next.ts";
import { guideText } from "../begin/shipped.ts";
import { milestonesOf } from "../begin/milestones.ts";
import { starterFiles, type Beginning } from "../begin/starter.ts";
import { editorSchemas } from "../load/compose.ts";
import { schemaFolder } from "../load/own-schemas.ts";
import type { Definitions } from "../model/definitions.ts";
import { chosen, dayOption } from "./choose.ts";
import { formatOption, UsageError, type Command, type Effects, type Exit, type Given } from "./command.ts";

import { landingPath } from "../publish/issue/folder.ts";
import { shownPath } from "./books.ts";
import { cutOffOf, endedIn, filesOfNext, lastBook, refuseWithoutShelves, stated } from "./new-from.ts";
import { tellNew } from "./new-text.ts";
import { renewSchemas } from "./new-schemas.ts";

export const begin: Command = {
  name: "new",
  summary: "begin a book: the smallest there is, judged at once",
  arguments: [{ name: "folder", required: true, means: "folder of the new book; it is made, or is empty" }],
  options: {
    register: {
      value: "NAME",
      means: "register of what the book must contain; all are listed by databook explain registers",
    },
    profile: { value: "NAME", means: "set of parameters it is judged with; cautious if not given" },
    number: { value: "TEXT", means: "number of the book; the name of the folder if not given" },
    title: { value: "TEXT", means: "title on its front page; the title of the register if not given" },
    serial: { value: "TEXT", means: "serial number of the equipment, which begins its record" },
    "order-date": { value: "DAY", means: "day of the order, such as 2026-03-09: the first milestone is reached on it" },
    from: {
      value: "BOOK",
      means: "take along from that book what is the same for the next job; needs --order-date",
    },
    "same-design": {
      means: "with --from: equipment, drawings, parts, joints and plan too, without what was measured; needs --serial",
    },
    schemas: { means: "renew the schemas that go with the book in that folder, and do nothing else" },
    format: formatOption(["text", "json"]),
  },
  help: [
    "Writes book.json, issue.json with the milestones that the register and the fields use, none of them reached before the " +
      `order, a guide (README.md), and in ${schemaFolder}/ the schemas with which an editor completes fields. Nothing is written ` +
      "that was not given: what is missing is for check to say. Evidence counts up to the day of the order, or up to today where " +
      "that is not given: dataCutOff in issue.json, raised as the job goes on.",
    `${schemaFolder}/ is no part of the evidence. check notes when it is of another version than the program; --schemas renews it.`,
    "--from takes whole, with their originals, the records that stand for themselves: people, firms, procedures, qualifications, " +
      "instruments, approvals (x-carry in the schemas); and the maps of the shop's sheets (imports/). Evidence of that job stays behind, and whoever its order alone named. Said at " +
      "the end: what came along, what stayed, what has ended by the day of the order, and of what nobody can say it.",
    "--same-design takes field by field what was decided before anything was made: nothing measured, stamped, dated or signed, no " +
      "number of that job, no paper, and of the plan the steps without their results.",
    "A folder that holds anything is refused, and one inside a book or an issue.",
    "Exit 0: the book was begun, whatever it still lacks. Exit 2: it was not.",
  ],
  async run(given, effects) {
    const dir = resolve(effects.cwd, given.arguments[0] ?? "");
    const definitions = effects.engine.definitions();
    const { options } = given;
    if (options.has("schemas")) return renewSchemas(dir, given, definitions, effects);
    const from = options.get("from");
    if (from !== undefined) return begunFrom(from, dir, given, definitions, effects);
    if (options.has("same-design"))
      throw new UsageError("--same-design goes with --from: the design is that of the last book");
    const beginning = beginningOf(dir, given, definitions, options.get("order-date") ?? effects.today());
    const texts = new Map([...starterFiles(beginning, definitions.kinds, guideText()), ...schemasOf(definitions)]);
    await write(dir, { texts });
    return tellNew(dir, beginning, texts, options.get("format"), effects);
  },
};

const schemasOf = ({ kinds }: Pick<Definitions, "kinds">) =>
  [...editorSchemas(kinds)].map(([name, text]) => [`${schemaFolder}/${name}`, text] as const);

async function begunFrom(
  from: string,
  dir: string,
  given: Given,
  definitions: Definitions,
  effects: Effects,
): Promise<Exit> {
  const { options } = given;
  const [ordered, serial, sameDesign] = [options.get("order-date"), options.get("serial"), options.has("same-design")];
  if (ordered === undefined)
    throw new UsageError("--from needs --order-date, so that it can be said what has ended by then");
  if (sameDesign && serial === undefined)
    throw new UsageError("--same-design needs --serial: the equipment is identified by its own number");
  dayOption("order-date", ordered);
  await refuse(() => refuseTaken(dir));
  const last = await lastBook(from, { sameDesign, ...(serial !== undefined && { serial }) }, effects);
  if (last === undefined) return 2;
  refuseWithoutShelves(last.read);
  const beginning = beginningOf(dir, given, definitions, cutOffOf(last.read), {
    register: stated(last.read, "register"),
    profile: stated(last.read, "profile"),
    ...(sameDesign && { title: stated(last.read, "title") }),
  });
  const { texts, copies, missing } = filesOfNext(last, await landingPath(dir), beginning, sameDesign);
  effects.progress("writing");
  const whole = new Map([...texts, ...schemasOf(definitions)]);
  await write(dir, { texts: whole, copies: new Map([...copies, ...last.maps]) });
  return tellNew(dir, beginning, whole, options.get("format"), effects, {
    from: shownPath(last.read.dir, effects.cwd),
    orderDate: ordered,
    cutOff: cutOffOf(last.read),
    carried: last.carried,
    files: copies.size,
    maps: [...last.maps.keys()],
    missing,
    book: Object.entries(last.carried.book).filter(([name]) => !options.has(name) && name !== "shelves"),
    unreadable: last.read.unreadable,
    ended: endedIn(dir, effects),
    onShelves: standingAway(last.carried.records, last.read.shelves),
  });
}

const write = (dir: string, contents: Contents) => refuse(() => writeNewFolder(dir, contents));

async function refuse(work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (error instanceof FolderRefused) throw new UsageError(error.message);
    throw error;
  }
}

/** What is known of the book from options, else from the last book, else by default. */
function beginningOf(
  dir: string,
  { options }: Given,
  definitions: Definitions,
  cutOff: string,
  last: {
    readonly register?: string | undefined;
    readonly profile?: string | undefined;
    readonly title?: string | undefined;
  } = {},
): Beginning {
  const { registers, profiles } = definitions;
  const register = chosen("register", options.get("register") ?? last.register, registers);
  const profile = chosen("profile", options.get("profile") ?? last.profile ?? profiles[0]?.id, profiles);
  const ordered = dayOption("order-date", options.get("order-date"));
  const serial = options.get("serial");
  return {
    number: options.get("number") ?? basename(dir),
    title: options.get("title") ?? last.title ?? register.title,
    register,
    milestones: milestonesOf(register, definitions),
    profile: profile.id,
    cutOff,
    ...(ordered !== undefined && { ordered }),
    ...(serial !== undefined && { serial }),
    schemas: schemaFolder,
  };
}

import type { Person } from "../generated/records.ts";

/** Everyone of the demonstration books, by the firm they work for. All of them are invented. */

type Role = NonNullable<Person["roles"]>[number]["role"];

const person = (id: string, name: string, employer: string, role: Role, from: string, authority: string): Person => ({
  id,
  name,
  mark: id,
  employer,
  roles: [{ role, from, authority }],
});

const list = "list of responsible persons, revision 14";
const welders = "list of welders 2026";
const pass = "letter of appointment";
const signatories = "list of signatories";

const people: readonly Person[] = [
  person("R1", "R. Vellumgate", "TARNEQUILL", "design", "2014-03-01", list),
  person("R2", "T. Marrowgate", "TARNEQUILL", "checker", "2019-09-02", list),
  person("M1", "M. Thistledown-Rae", "TARNEQUILL", "welding coordinator", "2016-01-11", list),
  person("W03", "I. Quillfeather", "TARNEQUILL", "welder", "2018-04-16", welders),
  person("W07", "O. Brackenshaw-Tull", "TARNEQUILL", "welder", "2019-05-02", welders),
  person("S1", "F. Hobbleworth", "TARNEQUILL", "shop", "2012-08-20", "stamp transfer authority 2026"),
  person("D2", "D. Copsewright", "TARNEQUILL", "quality control", "2015-06-01", list),
  person("B4", "B. Inkerstone", "TARNEQUILL", "document control", "2017-02-06", list),
  person("B5", "L. Sedgewarble", "TARNEQUILL", "document control", "2022-10-03", list),
  person(
    "K1",
    "J. Tarnequill",
    "TARNEQUILL",
    "authorised signatory",
    "2009-01-01",
    "register of companies, Lintharrow",
  ),
  person("N1", "H. Lanternby", "GLIMMERFIELD", "testing", "2017-05-15", "written authorisation to test"),
  person("N2", "J. Fennimarsh", "GLIMMERFIELD", "testing", "2018-11-20", "written authorisation to test"),
  person("N3", "K. Wickerbow", "GLIMMERFIELD", "testing", "2011-03-07", "written authorisation to test"),
  person("E1", "E. Cairnhollow", "PENQUILLITH", "inspection body", "2013-09-16", pass),
  person("E2", "A. Thornleigh-Voss", "PENQUILLITH", "inspection body", "2010-05-03", pass),
  person("P1", "G. Lampwick", "PEBBLEWRIGHT", "client", "2026-01-19", "order PW-1187, contacts"),
  person("V1", "Y. Pellingrove", "HOLLYVANE", "supplier", "2020-02-10", "list of bench testers"),
  person("F1", "W. Stampcross", "BOWLTHORNE", "supplier", "2016-03-14", "list of furnace supervisors"),
  person("L1", "C. Weatherspoke", "LARKMETRIC", "laboratory", "2018-07-02", signatories),
  person("W12", "S. Emberlode", "TARNEQUILL", "welder", "2021-03-15", welders),
  person("W15", "P. Yarrowick", "TARNEQUILL", "welding operator", "2020-06-08", welders),
  person("W19", "T. Ostlerby", "TARNEQUILL", "welder", "2022-09-05", welders),
  person("P2", "C. Oastwater", "OATMARROW", "client", "2026-01-12", "order OD-2604, contacts"),
  person("G1", "P. Wickenhall", "EMBERQUOIN", "supplier", "2018-05-14", signatories),
  person("Q1", "J. Sallowmere", "QUERNLOCK", "supplier", "2019-02-11", signatories),
  person("H1", "A. Millrace", "RILLWICK", "supplier", "2019-11-04", signatories),
];

/** The people of a book, by their marks; throws when the facts name one who is not there. */
export const peopleOf = (marks: string): readonly Person[] =>
  marks.split(" ").map((mark) => {
    const found = people.find(({ id }) => id === mark);
    if (found === undefined) throw new Error(`the facts name no person ${mark}`);
    return found;
  });

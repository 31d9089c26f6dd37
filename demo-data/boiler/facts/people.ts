import { people as shopPeople, organisationOf as shopOrganisationOf } from "../../air-receiver/facts/people.ts";
import type { Organisation, Person } from "../../../src/generated/records.ts";

/** Everyone and every firm of the book. The shop, its body and its suppliers are those of the receiver; all are invented. */

const shared =
  "TARNEQUILL PENQUILLITH GREYVAULT NETTLEWEIR HAMMERQUIST UMBERHITHE SORRELARC HOLLYVANE LARKMETRIC GLIMMERFIELD";

const organisation = (
  id: string,
  name: string,
  roles: NonNullable<Organisation["roles"]>,
  address: string,
): Organisation => ({ id, name, roles, address: `${address}, Varrenmark` });

export const organisations: readonly Organisation[] = [
  ...shared.split(" ").map(shopOrganisationOf),
  organisation("OATMARROW", "Oatmarrow Maltings", ["client"], "Kilnside 4, Nether Quellby"),
  organisation("FATHOMREACH", "Fathomreach Pipe Mill", ["mill"], "Piercer Lane 15, Cobblewick"),
  organisation("KESTLEBAR", "Kestlebar Rolling Mill", ["mill"], "Bloomgate 8, Ashmere"),
  organisation("EMBERQUOIN", "Emberquoin Burners", ["supplier"], "Flare Street 26, Lintharrow"),
  organisation("QUERNLOCK", "Quernlock Fittings", ["supplier"], "Cockle Lane 17, Lintharrow"),
  organisation("RILLWICK", "Rillwick Feed Pumps", ["supplier"], "Impeller Row 2, Ashmere"),
];

type Role = NonNullable<Person["roles"]>[number]["role"];

const person = (id: string, name: string, employer: string, role: Role, from: string, authority: string): Person => ({
  id,
  name,
  mark: id,
  employer,
  roles: [{ role, from, authority }],
});

const kept = "R1 R2 M1 W03 W07 S1 D2 B4 B5 K1 N1 N2 N3 E1 E2 V1".split(" ");
const welders = "list of welders 2026";
const client = shopPeople.find(({ id }) => id === "P1")?.name ?? "P1";

export const people: readonly Person[] = [
  ...shopPeople.filter(({ id }) => kept.includes(id)),
  person("W12", "S. Emberlode", "TARNEQUILL", "welder", "2021-03-15", welders),
  person("W15", "P. Yarrowick", "TARNEQUILL", "welding operator", "2020-06-08", welders),
  person("W19", "T. Ostlerby", "TARNEQUILL", "welder", "2022-09-05", welders),
  person("P1", client, "OATMARROW", "client", "2026-01-12", "order OD-2604, contacts"),
  person("G1", "P. Wickenhall", "EMBERQUOIN", "supplier", "2018-05-14", "list of signatories"),
  person("Q1", "J. Sallowmere", "QUERNLOCK", "supplier", "2019-02-11", "list of signatories"),
  person("H1", "A. Millrace", "RILLWICK", "supplier", "2019-11-04", "list of signatories"),
];

/** An organisation of the book; throws when the facts name one that is not there. */
export function organisationOf(id: string): Organisation {
  const found = organisations.find((one) => one.id === id);
  if (found === undefined) throw new Error(`the facts name no organisation ${id}`);
  return found;
}

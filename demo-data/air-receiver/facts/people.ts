import type { Organisation, Person } from "../../../src/generated/records.ts";

/** Everyone and every firm of the book. All of them are invented, and so are the places. */

export const organisations: readonly Organisation[] = [
  {
    id: "TARNEQUILL",
    name: "Tarnequill Boiler Works",
    roles: ["maker"],
    address: "Ostrelwharf 3, Lintharrow, Varrenmark",
  },
  {
    id: "PEBBLEWRIGHT",
    name: "Pebblewright Glass",
    roles: ["client"],
    address: "Furnace Lane 12, Nether Quellby, Varrenmark",
  },
  {
    id: "PENQUILLITH",
    name: "Penquillith Inspection",
    roles: ["inspection body"],
    address: "Quillgate 9, Lintharrow, Varrenmark",
    number: "0000",
    accreditation: "demonstration number, no real body",
  },
  {
    id: "GREYVAULT",
    name: "Greyvault Plate Mill",
    roles: ["mill"],
    address: "Rollgate 1, Ashmere, Varrenmark",
  },
  {
    id: "BOWLTHORNE",
    name: "Bowlthorne Dished Ends",
    roles: ["mill", "supplier"],
    address: "Presshouse Row 4, Ashmere, Varrenmark",
  },
  {
    id: "NETTLEWEIR",
    name: "Nettleweir Tube Mill",
    roles: ["mill"],
    address: "Weirside 22, Cobblewick, Varrenmark",
  },
  {
    id: "HAMMERQUIST",
    name: "Hammerquist Forge",
    roles: ["mill"],
    address: "Anvil Rise 7, Cobblewick, Varrenmark",
  },
  {
    id: "THREADLOW",
    name: "Threadlow Fasteners",
    roles: ["mill", "supplier"],
    address: "Tapper's Yard 5, Lintharrow, Varrenmark",
  },
  {
    id: "UMBERHITHE",
    name: "Umberhithe Metals",
    roles: ["stockist"],
    address: "Lighter Quay 18, Lintharrow, Varrenmark",
  },
  {
    id: "SORRELARC",
    name: "Sorrelarc Consumables",
    roles: ["supplier"],
    address: "Fluxworks 2, Cobblewick, Varrenmark",
  },
  {
    id: "HOLLYVANE",
    name: "Hollyvane Valves",
    roles: ["supplier"],
    address: "Spindle Street 31, Ashmere, Varrenmark",
  },
  {
    id: "LARKMETRIC",
    name: "Larkmetric Calibration",
    roles: ["laboratory"],
    address: "Gaugehouse 6, Lintharrow, Varrenmark",
    accreditation: "VM-CAL-041 (invented)",
  },
  {
    id: "GLIMMERFIELD",
    name: "Glimmerfield Testing",
    roles: ["testing"],
    address: "Lampblack Court 3, Lintharrow, Varrenmark",
    accreditation: "VM-TST-112 (invented)",
  },
];

const list = "list of responsible persons, revision 14";
const pass = "letter of appointment";

export const people: readonly Person[] = [
  {
    id: "R1",
    name: "R. Vellumgate",
    mark: "R1",
    employer: "TARNEQUILL",
    roles: [{ role: "design", from: "2014-03-01", authority: list }],
  },
  {
    id: "R2",
    name: "T. Marrowgate",
    mark: "R2",
    employer: "TARNEQUILL",
    roles: [{ role: "checker", from: "2019-09-02", authority: list }],
  },
  {
    id: "M1",
    name: "M. Thistledown-Rae",
    mark: "M1",
    employer: "TARNEQUILL",
    roles: [{ role: "welding coordinator", from: "2016-01-11", authority: list }],
  },
  {
    id: "W03",
    name: "I. Quillfeather",
    mark: "W03",
    employer: "TARNEQUILL",
    roles: [{ role: "welder", from: "2018-04-16", authority: "list of welders 2026" }],
  },
  {
    id: "W07",
    name: "O. Brackenshaw-Tull",
    mark: "W07",
    employer: "TARNEQUILL",
    roles: [{ role: "welder", from: "2019-05-02", authority: "list of welders 2026" }],
  },
  {
    id: "S1",
    name: "F. Hobbleworth",
    mark: "S1",
    employer: "TARNEQUILL",
    roles: [{ role: "shop", from: "2012-08-20", authority: "stamp transfer authority 2026" }],
  },
  {
    id: "D2",
    name: "D. Copsewright",
    mark: "D2",
    employer: "TARNEQUILL",
    roles: [{ role: "quality control", from: "2015-06-01", authority: list }],
  },
  {
    id: "B4",
    name: "B. Inkerstone",
    mark: "B4",
    employer: "TARNEQUILL",
    roles: [{ role: "document control", from: "2017-02-06", authority: list }],
  },
  {
    id: "B5",
    name: "L. Sedgewarble",
    mark: "B5",
    employer: "TARNEQUILL",
    roles: [{ role: "document control", from: "2022-10-03", authority: list }],
  },
  {
    id: "K1",
    name: "J. Tarnequill",
    mark: "K1",
    employer: "TARNEQUILL",
    roles: [{ role: "authorised signatory", from: "2009-01-01", authority: "register of companies, Lintharrow" }],
  },
  {
    id: "N1",
    name: "H. Lanternby",
    mark: "N1",
    employer: "GLIMMERFIELD",
    roles: [{ role: "testing", from: "2017-05-15", authority: "written authorisation to test" }],
  },
  {
    id: "N2",
    name: "J. Fennimarsh",
    mark: "N2",
    employer: "GLIMMERFIELD",
    roles: [{ role: "testing", from: "2018-11-20", authority: "written authorisation to test" }],
  },
  {
    id: "N3",
    name: "K. Wickerbow",
    mark: "N3",
    employer: "GLIMMERFIELD",
    roles: [{ role: "testing", from: "2011-03-07", authority: "written authorisation to test" }],
  },
  {
    id: "E1",
    name: "E. Cairnhollow",
    mark: "E1",
    employer: "PENQUILLITH",
    roles: [{ role: "inspection body", from: "2013-09-16", authority: pass }],
  },
  {
    id: "E2",
    name: "A. Thornleigh-Voss",
    mark: "E2",
    employer: "PENQUILLITH",
    roles: [{ role: "inspection body", from: "2010-05-03", authority: pass }],
  },
  {
    id: "P1",
    name: "G. Lampwick",
    mark: "P1",
    employer: "PEBBLEWRIGHT",
    roles: [{ role: "client", from: "2026-01-19", authority: "order PW-1187, contacts" }],
  },
  {
    id: "V1",
    name: "Y. Pellingrove",
    mark: "V1",
    employer: "HOLLYVANE",
    roles: [{ role: "supplier", from: "2020-02-10", authority: "list of bench testers" }],
  },
  {
    id: "F1",
    name: "W. Stampcross",
    mark: "F1",
    employer: "BOWLTHORNE",
    roles: [{ role: "supplier", from: "2016-03-14", authority: "list of furnace supervisors" }],
  },
  {
    id: "L1",
    name: "C. Weatherspoke",
    mark: "L1",
    employer: "LARKMETRIC",
    roles: [{ role: "laboratory", from: "2018-07-02", authority: "list of signatories" }],
  },
];

/** An organisation of the book; throws when the facts name one that is not there. */
export function organisationOf(id: string): Organisation {
  const found = organisations.find((one) => one.id === id);
  if (found === undefined) throw new Error(`the facts name no organisation ${id}`);
  return found;
}

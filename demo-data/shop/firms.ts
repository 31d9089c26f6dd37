import type { Organisation } from "../generated/records.ts";

/** Every firm of the demonstration books. All of them are invented, and so are the places. */

const firm = (
  id: string,
  name: string,
  roles: NonNullable<Organisation["roles"]>,
  address: string,
  known: Pick<Organisation, "number" | "accreditation"> = {},
): Organisation => ({ id, name, roles, address: `${address}, Varrenmark`, ...known });

const organisations: readonly Organisation[] = [
  firm("TARNEQUILL", "Tarnequill Boiler Works", ["maker"], "Ostrelwharf 3, Lintharrow"),
  firm("PEBBLEWRIGHT", "Pebblewright Glass", ["client"], "Furnace Lane 12, Nether Quellby"),
  firm("PENQUILLITH", "Penquillith Inspection", ["inspection body"], "Quillgate 9, Lintharrow", {
    number: "0000",
    accreditation: "demonstration number, no real body",
  }),
  firm("GREYVAULT", "Greyvault Plate Mill", ["mill"], "Rollgate 1, Ashmere"),
  firm("BOWLTHORNE", "Bowlthorne Dished Ends", ["mill", "supplier"], "Presshouse Row 4, Ashmere"),
  firm("NETTLEWEIR", "Nettleweir Tube Mill", ["mill"], "Weirside 22, Cobblewick"),
  firm("HAMMERQUIST", "Hammerquist Forge", ["mill"], "Anvil Rise 7, Cobblewick"),
  firm("THREADLOW", "Threadlow Fasteners", ["mill", "supplier"], "Tapper's Yard 5, Lintharrow"),
  firm("UMBERHITHE", "Umberhithe Metals", ["stockist"], "Lighter Quay 18, Lintharrow"),
  firm("SORRELARC", "Sorrelarc Consumables", ["supplier"], "Fluxworks 2, Cobblewick"),
  firm("HOLLYVANE", "Hollyvane Valves", ["supplier"], "Spindle Street 31, Ashmere"),
  firm("LARKMETRIC", "Larkmetric Calibration", ["laboratory", "supplier"], "Gaugehouse 6, Lintharrow", {
    accreditation: "VM-CAL-041 (invented)",
  }),
  firm("GLIMMERFIELD", "Glimmerfield Testing", ["testing"], "Lampblack Court 3, Lintharrow", {
    accreditation: "VM-TST-112 (invented)",
  }),
  firm("OATMARROW", "Oatmarrow Maltings", ["client"], "Kilnside 4, Nether Quellby"),
  firm("FATHOMREACH", "Fathomreach Pipe Mill", ["mill"], "Piercer Lane 15, Cobblewick"),
  firm("KESTLEBAR", "Kestlebar Rolling Mill", ["mill"], "Bloomgate 8, Ashmere"),
  firm("EMBERQUOIN", "Emberquoin Burners", ["supplier"], "Flare Street 26, Lintharrow"),
  firm("QUERNLOCK", "Quernlock Fittings", ["supplier"], "Cockle Lane 17, Lintharrow"),
  firm("RILLWICK", "Rillwick Feed Pumps", ["supplier"], "Impeller Row 2, Ashmere"),
];

/** A firm; throws when the facts name one that is not there. */
export function organisationOf(id: string): Organisation {
  const found = organisations.find((one) => one.id === id);
  if (found === undefined) throw new Error(`the facts name no organisation ${id}`);
  return found;
}

/** The firms of a book, by their ids. */
export const firms = (ids: string): readonly Organisation[] => ids.split(" ").map(organisationOf);

import { firms } from "../../shop/firms.ts";
import { peopleOf } from "../../shop/people.ts";

/** Everyone and every firm of the book. */
export const organisations = firms(
  "TARNEQUILL PEBBLEWRIGHT PENQUILLITH GREYVAULT BOWLTHORNE NETTLEWEIR HAMMERQUIST THREADLOW UMBERHITHE SORRELARC HOLLYVANE LARKMETRIC GLIMMERFIELD",
);
export const people = peopleOf("R1 R2 M1 W03 W07 S1 D2 B4 B5 K1 N1 N2 N3 E1 E2 P1 V1 F1 L1");

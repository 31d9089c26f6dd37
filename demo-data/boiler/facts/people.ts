import { firms } from "../../shop/firms.ts";
import { peopleOf } from "../../shop/people.ts";

/** Everyone and every firm of the book. */
export const organisations = firms(
  "TARNEQUILL PENQUILLITH GREYVAULT NETTLEWEIR HAMMERQUIST UMBERHITHE SORRELARC HOLLYVANE LARKMETRIC GLIMMERFIELD OATMARROW FATHOMREACH KESTLEBAR EMBERQUOIN QUERNLOCK RILLWICK",
);
export const people = peopleOf("R1 R2 M1 W03 W07 S1 D2 B4 B5 K1 N1 N2 N3 E1 E2 V1 L1 W12 W15 W19 P2 G1 Q1 H1");

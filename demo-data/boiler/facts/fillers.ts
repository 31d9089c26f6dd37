/** Classes of the consumables, as welding procedures and batches name them. */
export const arcWire = "EN ISO 14171-A - S2";
export const arcFlux = "EN ISO 14174 - S A AB 1 67 AC H5";
export const wire = "EN ISO 14341-A - G 42 4 M21 3Si1";
export const rod = "EN ISO 636-A - W 42 5 W3Si1";
export const mixedGas = "EN ISO 14175 - M21";
export const argon = "EN ISO 14175 - I1";

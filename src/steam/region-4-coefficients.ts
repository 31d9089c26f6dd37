/** IAPWS R7-97(2012), table 34: coefficients n of the saturation-pressure equation, the first of them n[0]. */
export const region4 = [
  1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333, 14.91510861353,
  -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798,
] as const;

/** IAPWS R7-97(2012), table 1: the first three coefficients n of the boundary between regions 2 and 3, pressure in MPa from K. */
export const boundary23 = [348.05185628969, -1.1671859879975, 0.10192970039326e-2] as const;

/** Constants of the saturation pressure of water vapour over water, in the form of Magnus. */
const [b, c] = [17.62, 243.12];

/** Where they stand. */
export const magnus =
  "Magnus form with the constants of Sonntag, 1990, which the World Meteorological Organization recommends (WMO 2008)";

/**
 * Dew point of moist air in °C.
 * @param air temperature in °C, −45 to 60
 * @param humidity relative humidity over water, above 0, at most 1
 * @returns the temperature at which its vapour saturates it; over water below 0 °C as well
 */
export function dewPoint(air: number, humidity: number): number {
  const gamma = Math.log(humidity) + (b * air) / (c + air);
  return (c * gamma) / (b - gamma);
}

/** Last day of winter time in the year of manufacture. */
const summerFrom = "2026-03-29";

/** A time of day in the shop, with the offset that held on that day: at("2026-03-02", "08:20"). */
export const at = (day: string, time: string): string => `${day}T${time}${day < summerFrom ? "+01:00" : "+02:00"}`;

/** Minutes after midnight of "08:20". */
export const minutes = (time: string): number => {
  const [hours = 0, rest = 0] = time.split(":").map(Number);
  return 60 * hours + rest;
};

/** "08:20" of minutes after midnight. */
export const clock = (value: number): string =>
  `${String(Math.floor(value / 60)).padStart(2, "0")}:${String(Math.round(value % 60)).padStart(2, "0")}`;

/** Work on a joint on one day. */
export interface Session {
  readonly day: string;
  readonly from: string;
  readonly to: string;
}

/** Who welded a joint, and when; a second session begins with the last layer. */
export interface Welding {
  readonly joint: string;
  readonly welders: readonly string[];
  readonly sessions: readonly Session[];
}

type Slot = readonly [joint: string, from: string, to: string];

/** Joints one welder made on one day. */
const daily = (welder: string, day: string, ...slots: readonly Slot[]): readonly Welding[] =>
  slots.map(([joint, from, to]) => ({ joint, welders: [welder], sessions: [{ day, from, to }] }));

/** A long corner joint: two welders opposite each other, the inside on the first day, the outside on the next. */
const opposite = (joint: string, first: string, second: string): Welding => ({
  joint,
  welders: ["W03", "W12"],
  sessions: [
    { day: first, from: "07:40", to: "15:40" },
    { day: second, from: "07:40", to: "14:50" },
  ],
});

/** Every joint in the order of manufacture: shell, necks, furnace, branches, chamber, closing joints, stays, attachments. */
export const schedule: readonly Welding[] = [
  ...daily("W15", "2026-03-02", ["L1", "08:20", "11:30"], ["L2", "12:30", "15:20"]),
  ...daily("W19", "2026-03-03", ["F01", "07:50", "11:20"], ["F02", "12:10", "13:50"], ["F03", "14:00", "15:40"]),
  ...daily("W15", "2026-03-04", ["C1", "08:00", "14:40"]),
  ...daily(
    "W19",
    "2026-03-04",
    ["F04", "07:50", "09:20"],
    ["F05", "09:30", "11:00"],
    ["F06", "12:10", "13:20"],
    ["F07", "13:30", "14:40"],
  ),
  ...daily("W19", "2026-03-05", ["F08", "07:50", "08:50"], ["F09", "09:00", "10:00"], ["F10", "12:00", "15:30"]),
  ...daily("W19", "2026-03-06", ["F11", "07:40", "11:00"], ["F12", "11:40", "13:30"], ["F13", "13:40", "15:30"]),
  ...daily("W15", "2026-03-09", ["FS1", "08:00", "11:10"], ["FS2", "12:20", "15:10"]),
  ...daily("W15", "2026-03-10", ["WL1", "08:10", "10:40"]),
  ...daily("W03", "2026-03-13", ["K3", "07:40", "15:20"]),
  ...daily("W03", "2026-03-16", ["K4", "07:40", "15:10"]),
  ...daily("W15", "2026-03-16", ["FC1", "07:40", "11:20"], ["FC2", "12:10", "15:40"]),
  ...daily("W07", "2026-03-16", ["N01", "07:40", "10:50"], ["N02", "11:40", "13:40"], ["N03", "13:50", "15:50"]),
  ...daily("W07", "2026-03-17", ["N10", "07:50", "11:10"], ["N11", "12:10", "15:30"]),
  ...daily("W03", "2026-03-17", ["K2", "07:40", "14:30"]),
  ...daily("W12", "2026-03-17", ["K5", "08:00", "14:10"]),
  ...daily("W07", "2026-03-18", ["N12", "07:50", "11:10"], ["N13", "12:10", "15:30"]),
  ...daily("W07", "2026-03-19", ["N04", "07:50", "10:00"], ["N05", "10:10", "12:10"], ["N06", "13:00", "14:50"]),
  ...daily("W07", "2026-03-20", ["N07", "07:50", "09:40"], ["N08", "09:50", "11:10"], ["N09", "12:10", "13:30"]),
  ...daily("W07", "2026-03-23", ["M01", "07:50", "13:40"]),
  ...daily("W12", "2026-03-23", ["K1", "07:40", "14:50"]),
  opposite("E1", "2026-03-24", "2026-03-25"),
  opposite("E2", "2026-03-31", "2026-04-01"),
  ...daily("W12", "2026-04-02", ["K6", "08:00", "14:20"]),
  ...daily("W19", "2026-04-08", ["S11", "08:00", "10:00"], ["S12", "10:10", "12:10"], ["S13", "13:00", "15:00"]),
  ...daily("W19", "2026-04-09", ["S21", "08:00", "10:00"], ["S22", "10:10", "12:10"], ["S23", "13:00", "15:00"]),
  ...daily("W19", "2026-04-10", ["S31", "07:40", "15:10"]),
  ...daily("W19", "2026-04-13", ["S32", "07:40", "15:00"]),
  ...daily("W12", "2026-04-15", ["A1", "08:00", "10:40"], ["A2", "11:30", "14:10"]),
  ...daily("W12", "2026-04-16", ["A3", "08:00", "10:10"], ["A4", "10:20", "12:30"]),
  ...daily("W19", "2026-04-20", ["A5", "09:10", "10:00"]),
];

/** The last minute of work on a joint. */
export function lastSession({ joint, sessions }: Welding): Session {
  const last = sessions.at(-1);
  if (last === undefined) throw new Error(`nobody welded joint ${joint}`);
  return last;
}

const HOUR_MS = 3_600_000;
const HOURS_A_DAY = 24;

/** Below this the time left is told in hours, from there on in days. */
const HOURS_UNTIL_DAYS = 2 * HOURS_A_DAY;

/** With less than this left, a job that waits on somebody else cannot wait any more (common practice, no source). */
const LITTLE_LEFT_HOURS = 3 * HOURS_A_DAY;

/** Time until a job is needed, or since it was. `count` is whole days or hours; `hours` is exact and never negative. */
export type TimeLeft = {
  readonly isLate: boolean;
  readonly unit: 'days' | 'hours' | 'underAnHour';
  readonly count: number;
  readonly hours: number;
  readonly isLittle: boolean;
};

/** How long until `neededAt`, seen from `now`: hours under two days, days after; a late job is told the same way. */
export function timeLeft(neededAt: Date, now: Date): TimeLeft {
  const hours = (neededAt.getTime() - now.getTime()) / HOUR_MS;
  const span = Math.abs(hours);
  const unit = span < 1 ? 'underAnHour' : span < HOURS_UNTIL_DAYS ? 'hours' : 'days';
  const count = unit === 'days' ? Math.floor(span / HOURS_A_DAY) : Math.floor(span);
  return { isLate: hours < 0, unit, count, hours: Math.max(0, hours), isLittle: hours < LITTLE_LEFT_HOURS };
}

import type { TimeLeft } from '@/components/bench/time-left';
import type { Translator } from '@/lib/messages/translator';

/** Time left, or time since a job was due, as it is said: `6 days`, `31 hours`, `2 days late`. */
export function timeWords(t: Translator<'bench'>, { isLate, unit, count }: TimeLeft): string {
  switch (unit) {
    case 'days':
      return t(isLate ? 'left.lateDays' : 'left.days', { count });
    case 'hours':
      return t(isLate ? 'left.lateHours' : 'left.hours', { count });
    case 'underAnHour':
      return t(isLate ? 'left.lateUnderAnHour' : 'left.underAnHour');
  }
}

// Days are counted from the first day of the play; dates are yyyy-mm-dd, as the program gives and takes them, in no time zone.

const DAY = 86_400_000;
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** A date so many days later. */
export const later = (date, days) => new Date(Date.parse(date + "T00:00:00Z") + days * DAY).toISOString().slice(0, 10);

// Asked for some hundred times a change, and of the same days.
const named = new Map();

/** "12 Apr" of a day. */
export function dayWords(firstDay, day) {
  const key = `${firstDay} ${day}`;
  if (!named.has(key)) {
    const date = later(firstDay, day);
    named.set(key, `${Number(date.slice(8))} ${MONTHS[Number(date.slice(5, 7)) - 1]}`);
  }
  return named.get(key);
}

/** The Mondays and the firsts of months of a play: `{day, words, isMonth}`. */
export function ticks(firstDay, days) {
  const found = [];
  for (let day = 0; day < days; day++) {
    const date = later(firstDay, day);
    if (date.endsWith("-01")) {
      found.push({ day, words: MONTHS[Number(date.slice(5, 7)) - 1], isMonth: true });
    } else if (new Date(Date.parse(date)).getUTCDay() === 1) {
      found.push({ day, words: String(Number(date.slice(8))), isMonth: false });
    }
  }
  return found;
}

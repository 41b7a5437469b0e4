// Days and lengths of time, as the phone's own clock has them.

const two = (number) => String(number).padStart(2, '0');

/** A moment's day, as rows have it. */
export function dayOf(ms) {
  const date = new Date(ms);
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** A moment as an input of day and time wants it. */
export function localMoment(ms) {
  const date = new Date(ms);
  return `${dayOf(ms)}T${two(date.getHours())}:${two(date.getMinutes())}`;
}

/** Whole minutes between two moments, as hours and minutes; a minute at the least. */
export function worked(from, to) {
  const minutes = Math.max(1, Math.round((to - from) / 60000));
  return `${Math.floor(minutes / 60)}:${two(minutes % 60)}`;
}

/** A running length, with seconds. */
export function running(from, to) {
  const seconds = Math.max(0, Math.floor((to - from) / 1000));
  return `${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}

/** Whether a timer has run so long that it was most likely forgotten, or the phone's clock was set back. */
export const looksForgotten = (from, to) => to - from > 10 * 3600000 || to < from;

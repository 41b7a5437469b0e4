/** Says how far a long work is. */
export interface Progress {
  /** One more is done. */
  step(): void;
  /** All is done. */
  end(): void;
}

/** Where it is said, and what time it is in milliseconds. */
export interface Listener {
  readonly isTerminal: boolean;
  write(text: string): void;
  now(): number;
}

const BAR = 24;
/** Milliseconds between two drawings of the bar, and between two plain lines. */
const EVERY = { bar: 100, line: 10_000 };

/** A bar with rate and time left on a terminal, a plain line now and then elsewhere. */
export function showProgress(what: string, total: number, listener: Listener): Progress {
  const started = listener.now();
  let done = 0;
  let said = started;
  const say = () => {
    said = listener.now();
    const text = `${what} ${done} of ${total}, ${rateText(done, total, said - started)}`;
    listener.write(listener.isTerminal ? `\r${bar(done / total)} ${text}\u001b[K` : `${text}\n`);
  };
  return {
    step() {
      done++;
      const every = listener.isTerminal ? EVERY.bar : EVERY.line;
      if (done < total && listener.now() - said >= every) say();
    },
    end() {
      if (total === 0) return;
      say();
      if (listener.isTerminal) listener.write('\n');
    },
  };
}

function bar(share: number): string {
  const full = Math.round(share * BAR);
  return `[${'#'.repeat(full)}${'.'.repeat(BAR - full)}]`;
}

/** `3.4 a second, 1:05 left`. */
function rateText(done: number, total: number, elapsed: number): string {
  const rate = done / (Math.max(1, elapsed) / 1000);
  const seconds = rate > 0 ? Math.ceil((total - done) / rate) : 0;
  const left = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')} left`;
  return `${rate.toFixed(1)} a second${done < total ? `, ${left}` : ''}`;
}

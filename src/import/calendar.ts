import { type ContentLine, contentLines } from './calendar-lines.ts';

/** A component of a calendar: an event, a to-do, a time zone (RFC 5545, 3.6). */
export interface Component {
  readonly line: number;
  readonly name: string;
  /** Its own properties, without those of components inside it. */
  readonly properties: readonly ContentLine[];
  /** Components inside it, like alarms. */
  readonly inside: readonly Component[];
  /** All its lines, from BEGIN to END. */
  readonly lines: readonly ContentLine[];
}

/** A calendar file: what is to be read, and what only says how. */
export interface Calendar {
  readonly components: readonly Component[];
  readonly zones: readonly Component[];
  /** Properties of the calendar itself: version, maker, method. */
  readonly properties: readonly ContentLine[];
}

/** Whether bytes begin as a calendar does. */
export function isCalendar(bytes: Uint8Array): boolean {
  const head = Buffer.from(bytes.subarray(0, 64)).toString('latin1');
  return /^(\xef\xbb\xbf)?\s*BEGIN:VCALENDAR/i.test(head);
}

/** An alarm in an event in a calendar is as deep as RFC 5545 goes. */
const MOST_INSIDE = 10;

/** Takes a calendar file apart, one calendar or several after one another (3.4); a text where its components do not fit. */
export function readCalendar(bytes: Uint8Array): Calendar | { wrong: string } {
  const root = open('', 0);
  const stack = [root];
  for (const line of contentLines(bytes)) {
    const name = line.value.trim().toUpperCase();
    const top = stack.at(-1) ?? root;
    if (line.name === 'BEGIN') {
      const wanted = stack.length === 1;
      if (wanted !== (name === 'VCALENDAR'))
        return { wrong: `line ${line.line}: ${name} may not begin here` };
      if (stack.length > MOST_INSIDE)
        return { wrong: `line ${line.line}: ${name} stands too deep` };
      stack.push(open(name, line.line));
    } else if (line.name === 'END') {
      if (stack.length === 1 || top.name !== name)
        return {
          wrong: `line ${line.line}: ${name} ends here, and ${top.name || 'nothing'} is open`,
        };
      stack.pop();
      stack.at(-1)?.inside.push(top);
    } else if (stack.length === 1) return { wrong: `line ${line.line} stands in no calendar` };
    else top.properties.push(line);
    for (const component of stack) component.lines.push(line);
    if (line.name === 'END') top.lines.push(line);
  }
  const unclosed = stack[1] && stack.at(-1);
  if (unclosed)
    return {
      wrong: `${unclosed.name} of line ${unclosed.line} never ends; the file may be cut off`,
    };
  const all = root.inside.flatMap(({ inside }) => inside);
  return {
    components: all.filter(({ name }) => name !== 'VTIMEZONE'),
    zones: all.filter(({ name }) => name === 'VTIMEZONE'),
    properties: root.inside.flatMap(({ properties }) => properties),
  };
}

interface Open extends Component {
  readonly properties: ContentLine[];
  readonly inside: Component[];
  readonly lines: ContentLine[];
}

function open(name: string, line: number): Open {
  return { name, line, properties: [], inside: [], lines: [] };
}

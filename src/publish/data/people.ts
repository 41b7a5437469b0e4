import type { ProjectInfo } from '../../model/kinds.ts';
import { type BareTable, tableOf } from './table.ts';

type People = ProjectInfo['people'];

/** The name and id of everyone who has no public name: an id may be a name, too. */
const UNNAMED = 'helper';

/** The id that a person is published under. */
export function publicPerson(people: People, id: string): string {
  return people.some((person) => person.id === id && person.name !== undefined) ? id : UNNAMED;
}

/** Who works on the machine. All without a public name are one. */
export function peopleTable(people: People): BareTable {
  const named = people.flatMap(({ id, name }) => (name === undefined ? [] : [{ id, name }]));
  const hidden = named.length < people.length && !named.some(({ id }) => id === UNNAMED);
  const text = { type: 'string', required: true } as const;
  return tableOf('people', {
    columns: [
      { ...text, name: 'id', cell: ({ id }) => id },
      { ...text, name: 'name', cell: ({ name }) => name },
    ],
    records: hidden ? [...named, { id: UNNAMED, name: UNNAMED }] : named,
  });
}

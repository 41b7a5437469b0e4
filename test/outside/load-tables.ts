import { spawnSync } from 'node:child_process';

/** Whether this machine lacks Python 3. */
export const noPython = spawnSync('python3', ['--version']).status !== 0;

// Python's csv and sqlite3 share nothing with us. The database is made from the descriptor alone: types, NOT NULL, CHECK, keys.
const SCRIPT = `
import csv, io, json, re, sqlite3, sys
asked = json.load(sys.stdin)
resources = json.loads(asked['files']['datapackage.json'])['resources']
db = sqlite3.connect(':memory:')
db.create_function('regexp', 2, lambda pattern, text: text is None or re.fullmatch(pattern, str(text)) is not None)
quoted = lambda name: '"' + name + '"'
listed = lambda names: ', '.join(map(quoted, names))
literal = lambda value: "'" + str(value).replace("'", "''") + "'"
AFFINITY = {'string': 'TEXT', 'date': 'TEXT', 'boolean': 'TEXT', 'integer': 'INTEGER', 'number': 'NUMERIC'}

def column(field):
    name, rules = quoted(field['name']), field.get('constraints', {})
    types = {
        # SQLite takes 30 February for a day unless it is made to reckon with it.
        'date': f"{name} = date({name}, '+0 days')",
        'boolean': f"{name} IN ('true', 'false')",
        'integer': f"typeof({name}) IN ('integer', 'null')",
        'number': f"typeof({name}) IN ('integer', 'real', 'null')",
    }
    checks = {'type': types.get(field['type'])}
    if 'minimum' in rules: checks['minimum'] = f"{name} >= {rules['minimum']}"
    if 'enum' in rules: checks['enum'] = f"{name} IN ({', '.join(map(literal, rules['enum']))})"
    if 'pattern' in rules: checks['pattern'] = f"{name} REGEXP {literal(rules['pattern'])}"
    needed = 'NOT NULL' if rules.get('required') else ''
    return f"{name} {AFFINITY[field['type']]} {needed} " + ' '.join(
        f"CONSTRAINT {quoted(field['name'] + ' ' + rule)} CHECK ({check})" for rule, check in checks.items() if check)

problems, cells = [], {}
for resource in resources:
    name, schema = resource['name'], resource['schema']
    keys = [f"PRIMARY KEY ({listed(schema['primaryKey'])})"] + [
        f"FOREIGN KEY ({listed(key['fields'])}) REFERENCES {quoted(key['reference'].get('resource', name))}"
        f" ({listed(key['reference']['fields'])})" for key in schema.get('foreignKeys', [])]
    db.execute(f"CREATE TABLE {quoted(name)} ({', '.join([column(field) for field in schema['fields']] + keys)})")
    try:
        rows = list(csv.reader(io.StringIO(asked['files'][resource['path']], newline=''), strict=True))
    except csv.Error as error:
        problems.append(f'{name}: {error}')
        continue
    cells[name] = rows
    if rows[0] != [field['name'] for field in schema['fields']]: problems.append(f'{name}: other columns')
    for row in rows[1:]:
        try:
            db.execute(f"INSERT INTO {quoted(name)} VALUES ({', '.join('?' * len(row))})", [cell or None for cell in row])
        except sqlite3.Error as error:
            problems.append(f'{name}: {error}')
for table, row, parent, _ in db.execute('PRAGMA foreign_key_check'):
    problems.append(f'{table}: row {row} names nothing in {parent}')
answers = [db.execute(query).fetchall() for query in asked['queries']] if not problems else []
json.dump({'problems': problems, 'cells': cells, 'answers': answers}, sys.stdout)
`;

/** What a database made of the tables says. */
export interface Loaded {
  /** Rows it refused, and keys that lead nowhere. */
  readonly problems: readonly string[];
  /** Cells of every table, header first, as Python reads them. */
  readonly cells: Readonly<Record<string, readonly (readonly string[])[]>>;
  /** Rows that each query gives; none when there are problems. */
  readonly answers: readonly (readonly (readonly (string | number | null)[])[])[];
}

/** Loads files by their names into a database, by their descriptor, and asks it. */
export function loadTables(
  files: Readonly<Record<string, string>>,
  queries: readonly string[] = [],
): Loaded {
  const input = JSON.stringify({ files, queries });
  const run = spawnSync('python3', ['-c', SCRIPT], {
    ...{ input, encoding: 'utf8', maxBuffer: 2 ** 27 },
    env: { ...process.env, PYTHONIOENCODING: 'utf-8' },
  });
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout) as Loaded;
}

import {parse} from 'yaml'; import fs from 'fs';
for (const p of parse(fs.readFileSync(process.argv[2],'utf8'))) if (p.source==='donor') console.log(JSON.stringify(p));

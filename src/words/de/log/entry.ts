import type { Words } from '../../keys.ts';

export const entry: Words['log']['entry'] = {
  document: 'Eintrag im Bautagebuch',
  draft: 'Entwurf',
  others: 'Weitere Einträge',
  before: 'Davor',
  after: 'Danach',
  table: 'Tabelle',
  inTheVideo: 'Im Video',
  watch: 'Ansehen',
  tells: 'Zeilen, von denen dieser Eintrag erzählt',
};

import { stringify } from 'yaml';

/** A record as YAML; what stands in it twice is written out twice, since the reader takes no aliases. */
export const yamlText = (value: unknown): string =>
  stringify(value, { aliasDuplicateObjects: false, lineWidth: 0 });

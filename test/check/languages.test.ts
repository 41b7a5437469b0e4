import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const site = (language: string) =>
  check({ 'site.yaml': ['language: en-GB', `language: ${language}`] });

describe('the language of a site', () => {
  it.each(['en-GB', 'en', 'de-DE', 'de-CH'])('may be %s', async (language) => {
    expect(await site(language)).toBe('');
  });

  it('may have no words here, which is said', async () => {
    expect(await site('fr-FR')).toMatchInlineSnapshot(`
      "site.yaml:3:11 (warning)
        language: there are no words for "fr-FR" here, so the pages speak English around your texts
        → add src/words/fr.ts, or write "en"; languages here are en, de"
    `);
  });

  it('is a language tag', async () => {
    expect(await site('German')).toMatchInlineSnapshot(`
      "site.yaml:3:11
        language: "German" is no language tag
        → write one like "en-GB""
    `);
  });
});

it('the language of a project is a language tag too', async () => {
  const said = await check({ 'press/project.yaml': ['timeZone:', 'language: e\ntimeZone:'] });
  expect(said).toContain('"e" is no language tag');
});

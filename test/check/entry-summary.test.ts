import { expect, it } from 'vitest';
import { SUMMARY_TO_WRITE } from '../../src/model/entry.ts';
import { check } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';
const WRITTEN = 'summary: The gib is in and the play is gone.';

it('warns of a published entry that has the summary of a new draft, and of no draft', async () => {
  expect(await check({ [ENTRY]: [WRITTEN, `summary: ${SUMMARY_TO_WRITE}`] })).toBe(
    `${ENTRY}:5:10 (warning)
  the summary is still the one of a new draft
  → write one plain sentence, for lists and feeds`,
  );
  const draft = `summary: ${SUMMARY_TO_WRITE}\ndraft: true`;
  expect(await check({ [ENTRY]: [WRITTEN, draft] })).not.toContain('of a new draft');
});

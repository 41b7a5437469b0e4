import { describe, expect, it } from 'vitest';
import type { Changes } from '../check/content-folder.ts';
import { inWorkshop, type Ran, runCommand } from './run-command.ts';

const SLUG = '2025-04-13-the-ram-slides';
const withVideo: Changes = {
  [`press/entries/${SLUG}.mdx`]: [
    'tells:',
    `video: https://clips.example/7
moments:
  - at: 4:32
    label: The nut
    part: nut
  - at: 0:40
    label: Play before
    spec: ram-play
tells:`,
  ],
};

const links = (args: readonly string[], changes: Changes = withVideo): Promise<Ran> =>
  inWorkshop(changes, (dirs) => runCommand(['links', ...args], dirs));

describe('links', () => {
  it('prints the lines for the description of a video', async () => {
    expect(await links([SLUG])).toEqual({
      status: 0,
      out: `https://shed.example/press/log/${SLUG}/
0:40 Play before https://shed.example/press/specs/ram-play/
4:32 The nut https://shed.example/press/parts/nut/
`,
      err: '',
    });
  });

  it('says what did not fit into the length that is allowed', async () => {
    const { status, out, err } = await links([SLUG, '--most', '130']);
    expect([status, err.trim()]).toEqual([0, '1 of the moments did not fit into 130 characters.']);
    expect(out.trim().length).toBeLessThanOrEqual(130);
    expect(out).not.toContain('The nut');
  });

  it('says so where not even the address fits', async () => {
    const { status, out, err } = await links([SLUG, '--most', '20']);
    expect([status, out]).toEqual([1, '']);
    expect(err).toBe(
      `The address of the entry alone has ${`https://shed.example/press/log/${SLUG}/`.length} characters; 20 are too few.\n`,
    );
  });

  it('offers the entry that was meant', async () => {
    expect(await links(['2025-04-13-the-ram-slide'])).toEqual({
      status: 1,
      out: '',
      err: `There is no entry "2025-04-13-the-ram-slide". Did you mean "${SLUG}"?\n`,
    });
  });

  it('says what an entry without a video needs', async () => {
    expect(await links([SLUG], {})).toEqual({
      status: 1,
      out: '',
      err: `The entry "${SLUG}" names no video. Add "video: https://…" and moments to its front matter.\n`,
    });
  });

  it.each([[[]], [['a', 'b']], [[SLUG, '--most', 'many']], [[SLUG, '--most', '0']], [['--all']]])(
    'shows how it is used: %j',
    async (args) => {
      const { status, out, err } = await links(args);
      expect([status, out]).toEqual([2, '']);
      expect(err).toMatch(
        /^(There is no option --all\.\n)?npm run links -- <entry> \[--most 5000\]\n/,
      );
    },
  );
});

import { finish } from './commit.ts';
import { type Busy, withLock } from './lock.ts';

/** Does something as the only one who writes in a content folder, once what a killed process had begun there is brought to its end. */
export function alone<Result>(
  contentDir: string,
  what: string,
  act: () => Promise<Result>,
): Promise<Result | Busy> {
  return withLock(contentDir, what, async () => {
    await finish(contentDir);
    return act();
  });
}

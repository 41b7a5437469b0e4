import axe from 'axe-core';
import type { Page } from 'playwright-core';

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe found on a page, and what it could not decide. */
export interface Findings {
  readonly violations: readonly string[];
  readonly undecided: readonly Undecided[];
}

/** A rule that axe left to a person, and the element. */
export interface Undecided {
  readonly rule: string;
  readonly target: string;
}

/** Opens everything that folds, then lets axe look at the page by WCAG 2.2 A and AA and by its best practices. */
export async function lookAt(page: Page): Promise<Findings> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  await page.evaluate(axe.source);
  const found = await page.evaluate(async (runOnly) => {
    // axe puts itself there; its own types describe the module, not the page.
    const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
    const { violations, incomplete } = await axe.run(document, { runOnly });
    const listed = (results: typeof violations) =>
      results.flatMap(({ id, help, nodes }) =>
        nodes.map(({ target }) => ({ rule: id, help, target: target.join(' ') })),
      );
    return { violations: listed(violations), undecided: listed(incomplete) };
  }, RULES);
  return {
    violations: found.violations.map(({ rule, help, target }) => `${rule}: ${help} (${target})`),
    undecided: found.undecided.map(({ rule, target }) => ({ rule, target })),
  };
}

/**
 * Elements whose text stands out too little from the ground behind it, by the contrast ratio of WCAG 2.2 (1.4.3): text in a drawing, and
 * cells outside the visible part of a frame, are what axe leaves to others. The ground is the nearest one painted around the element.
 */
export function faintOf(page: Page, targets: readonly string[]): Promise<string[]> {
  return page.evaluate((selectors) => {
    const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
    const levelsOf = (colour: string): number[] => {
      if (!canvas) return [];
      canvas.clearRect(0, 0, 1, 1);
      canvas.fillStyle = colour;
      canvas.fillRect(0, 0, 1, 1);
      return [...canvas.getImageData(0, 0, 1, 1).data];
    };
    const luminance = (colour: string) => {
      const [red = 0, green = 0, blue = 0] = levelsOf(colour).map((level) => {
        const share = level / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    const groundOf = (element: Element | null): string => {
      if (element === null) return 'white';
      const { backgroundColor } = getComputedStyle(element);
      return levelsOf(backgroundColor)[3] === 255
        ? backgroundColor
        : groundOf(element.parentElement);
    };
    return selectors.filter((selector) => {
      const element = document.querySelector(selector);
      if (element === null) return true;
      const { fill, color, fontSize } = getComputedStyle(element);
      const [ink, ground] = [element.closest('svg') ? fill : color, groundOf(element)].map(
        luminance,
      );
      const [light, dark] = [Math.max(ink ?? 0, ground ?? 0), Math.min(ink ?? 0, ground ?? 0)];
      return (light + 0.05) / (dark + 0.05) < (Number.parseFloat(fontSize) >= 24 ? 3 : 4.5);
    });
  }, targets);
}

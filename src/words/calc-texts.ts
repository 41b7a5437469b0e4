/** What pages print of one calculation of the library, in one language. Its source is cited in its own words. */
export interface CalculationTexts {
  readonly title: string;
  /** What each input is, by its symbol; the input that takes a list by its key. */
  readonly inputs: Readonly<Record<string, string>>;
  readonly assumptions: readonly string[];
  readonly caution?: string | undefined;
  /** What is wrong where a requirement does not hold, in the order of the requirements. */
  readonly requires?: readonly string[];
}

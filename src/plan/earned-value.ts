/** What earned value is worked out from, in one unit: minutes or money. */
export interface EarnedValueInputs {
  /** Budget at completion: all that was planned. */
  readonly budget: number;
  /** Planned value: what should be done by now, at its budget. */
  readonly planned: number;
  /** Earned value: what is done by now, at its budget. */
  readonly earned: number;
  /** Actual cost of what is done by now. */
  readonly actual: number;
}

/** The usual figures, by the names of ANSI/PMI 19-006; an index is undefined where its ratio means nothing. */
export interface EarnedValue {
  /** CV: in hand when positive. */
  readonly costVariance: number;
  /** SV: ahead when positive. */
  readonly scheduleVariance: number;
  /** CPI */
  readonly costIndex: number | undefined;
  /** SPI */
  readonly scheduleIndex: number | undefined;
  /** EAC: what all will cost if it goes on as so far. */
  readonly estimateAtCompletion: number | undefined;
  /** ETC */
  readonly estimateToComplete: number | undefined;
  /** VAC */
  readonly varianceAtCompletion: number | undefined;
  /** TCPI: the cost index the rest needs to end on budget. */
  readonly toCompleteIndex: number | undefined;
}

/** Earned-value figures from four sums. */
export function earnedValue({ budget, planned, earned, actual }: EarnedValueInputs): EarnedValue {
  const costIndex = ratio(earned, actual);
  // With nothing earned yet, "as so far" would never end.
  const estimateAtCompletion = costIndex === undefined ? undefined : ratio(budget, costIndex);
  return {
    costVariance: earned - actual,
    scheduleVariance: earned - planned,
    costIndex,
    scheduleIndex: ratio(earned, planned),
    estimateAtCompletion,
    estimateToComplete: difference(estimateAtCompletion, actual),
    varianceAtCompletion: difference(budget, estimateAtCompletion),
    toCompleteIndex: ratio(budget - earned, budget - actual),
  };
}

/** A ratio, or undefined when nothing can be divided by; an overspent budget can't be kept, so a negative divisor is none. */
export function ratio(above: number, below: number): number | undefined {
  return below > 0 ? above / below : undefined;
}

const difference = (from: number | undefined, what: number | undefined) =>
  from === undefined || what === undefined ? undefined : from - what;

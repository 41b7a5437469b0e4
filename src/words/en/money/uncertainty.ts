/** The uncertainty budget of a value that was worked out. */
export const uncertainty = {
  label: 'Uncertainty budget',
  input: 'Input',
  whatItIs: 'What it is',
  sensitivity: 'Sensitivity',
  shareOfVariance: 'Share of u²',
  given: 'given',
};

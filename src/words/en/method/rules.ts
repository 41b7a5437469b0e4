/** The rules that totals go by. */
export const totals = {
  title: 'Totals',
  rules: [
    'Money is counted in whole pence or cents. Credits (sales, refunds, deposits back) are rows of their own and are taken off. Currencies are never added: an amount in another currency counts at the newest recorded rate on or before its day, rounded half away from zero.',
    'Hours are whole minutes. A phase starts with its first hours row and ends on the day it was called done.',
    'An entry shows the totals of its own day: rows dated up to and with that day. What it added is the difference from the entry before.',
    'A row that was wrong is never edited. Another row corrects it, and counts from the day that was written down; an earlier entry goes on showing what was believed then. A withdrawn row is a correction to nothing.',
    'Tax is worked out row by row, inside an amount as a · r / (100 + r) and outside as a · r / 100, rounded half away from zero to whole pence or cents.',
    'An amount that several phases or parts share is divided by stated amounts or weights with the largest remainder: each gets its exact part cut to whole pence or cents, and what is left over goes to the largest parts cut off, ties to the first. Nothing is lost.',
    'Gifts and trades stand at a stated value, shop tools in, out or at a share, and own work at a stated rate or none. The rules of the project say which are in its totals; what is not is shown apart.',
    'Amounts that are withheld count in one total for their category, dated the newest day, so that no difference between two totals gives one away.',
    '"Today" on this site is the day of a project\'s newest row, not the day you read this.',
    'The state of a part on a day is the furthest of its dated steps: wanted, ordered, in hand, fitted, scrapped, sold. A part without any is noted.',
  ],
};

/** The rules that measured values go by. */
export const measured = {
  title: 'Measured values',
  rules: [
    'A reading keeps its raw values. Its value is the mean of those that count; excluded ones stay, struck, with the reason.',
    'The uncertainty follows the GUM (JCGM 100:2008). Repeats give s/√n with n − 1 degrees of freedom (4.2.3). A digital or scale step δ gives δ/√12, a stated error ±a gives a/√3, a certificate U with its k gives U/k (4.3). They are combined as the root of the sum of squares.',
    "U is the expanded uncertainty at 95 %: k times u, with k from Student's t for the effective degrees of freedom (Welch–Satterthwaite, G.4.1), rounded to 0.1 and then down.",
    'Readings from one zero of one instrument share its error, and readings taken together share their scatter. What is shared is followed through every formula (5.2), and cancels in a difference.',
    'Digits shown follow two significant digits of U. A value without a ± had no known uncertainty and keeps the digits it was read with.',
    'Before and after count as {changed} only when the difference exceeds its own U.',
    'A limit is met when the value with its whole U lies within it (at the bound it is met), not met when the whole lies outside, and else {undecided}, after the idea of ISO 14253-1. A target set before the work is {reached} in the same sense.',
  ],
};

/** The rules that calculated values go by. */
export const calculated = {
  title: 'Calculated values',
  rules: [
    'A value in parentheses was calculated, not measured, as in drawing practice. Its page shows the formula, with symbols and with the numbers put in.',
    'Its uncertainty is propagated with the sensitivities of the formula (GUM 5.1). The budget shows what each input contributes.',
    "The latest value of each is checked by draws from the distributions of its inputs (JCGM 101:2008): Student's t for repeats, even between its ends for a step or a stated error, normal for a certificate. The linear part of the formula, whose distribution is known without drawing, steers the draws; as many are made as make both ends of the interval as sure as a million independent ones would, and no more than about a million. Where an end of the drawn interval is further from ± U than half of the last of two digits of u and three standard errors of the draws, the drawn interval is the one shown, as two deviations.",
    'It is worked out for a day on which all its inputs were read in one state; inputs that stay, such as a wheelbase, are carried from their newest earlier reading.',
  ],
};

/** An entry of the log. */
export const entry = {
  document: 'Log entry',
  draft: 'Draft',
  others: 'Other entries',
  before: 'Before',
  after: 'After',
  table: 'Table',
  inTheVideo: 'In the video',
  watch: 'Watch',
  tells: 'Rows this entry tells about',
};

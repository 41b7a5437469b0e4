/** Elements of plain HTML that may stand in an entry: those that only say what a text is. A link, a picture or a table has its Markdown. */
export const htmlElements: readonly string[] =
  `abbr b bdi bdo blockquote br caption cite code dd del details dfn div dl dt em figcaption figure h2 h3 h4 h5 h6 hr i ins kbd li mark
  ol p pre q rp rt ruby s samp section small span strong sub summary sup table tbody td tfoot th thead time tr u ul var wbr`.split(
    /\s+/,
  );

/** Their attributes: none that loads, runs, styles or names anything, whatever the renderer makes of others. */
export const htmlAttributes: readonly string[] =
  'colspan datetime dir lang open reversed rowspan scope start title value'.split(' ');

const formats = new Map<string, Intl.DateTimeFormat>();

/** A format of dates, made once: that takes longer than to use it a hundred times. Throws a RangeError for a zone or language that there is not. */
export function formatOf(
  language: string,
  options: Intl.DateTimeFormatOptions,
): Intl.DateTimeFormat {
  const key = `${language} ${JSON.stringify(options)}`;
  const format = formats.get(key) ?? new Intl.DateTimeFormat(language, options);
  formats.set(key, format);
  return format;
}

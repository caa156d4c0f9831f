/** A civil date in words, in the language of the page; empty where there is none. */
export const dayText = (language: string, civilDate?: string): string =>
  civilDate === undefined
    ? ''
    : new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' }).format(
        new Date(`${civilDate}T00:00:00Z`),
      );

const CODES = new Set(Intl.supportedValuesOf('currency'));

/** @returns the currency that a heading names, as a code or a sign: "Cost (EUR)", "price $". */
export function currencyIn(heading: string): string | undefined {
  return /\p{Sc}/u.exec(heading)?.[0] ?? heading.match(/\b[A-Z]{3}\b/g)?.find((word) => CODES.has(word));
}

const signs = new Map<string, ReadonlySet<string>>();

/** @returns the texts that stand for a currency, in capitals: its ISO 4217 code, and the signs that Intl writes for it. */
export function signsOf(currency: string): ReadonlySet<string> {
  const known = signs.get(currency);
  if (known) return known;
  const written = (['symbol', 'narrowSymbol'] as const).map(
    (currencyDisplay) =>
      new Intl.NumberFormat('en', { style: 'currency', currency, currencyDisplay })
        .formatToParts(0)
        .find(({ type }) => type === 'currency')?.value ?? currency,
  );
  const all = new Set([currency, ...written].map((text) => text.toUpperCase()));
  signs.set(currency, all);
  return all;
}

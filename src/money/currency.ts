/**
 * Minor-unit exponents of ISO 4217 list one (published 2024-06-25), with XCG (in force from 2025-03-31)
 * and HRK (withdrawn 2023-01-01, still found on old receipts). Codes without minor units (metals, testing) are left out:
 * nobody pays in them. `Intl` is no source here: it gives cash habits, not ISO exponents, for a dozen codes.
 */
const CODES_BY_EXPONENT: Readonly<Record<number, string>> = {
  0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF',
  2: `AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE CHF
      CHW CNY COP COU CRC CUC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HRK
      HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR
      MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP
      SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS VED VES WST XCD XCG YER ZAR
      ZMW ZWG`,
  3: 'BHD IQD JOD KWD LYD OMR TND',
  4: 'CLF UYW',
};

const EXPONENTS: ReadonlyMap<string, number> = new Map(
  Object.entries(CODES_BY_EXPONENT).flatMap(([exponent, codes]) =>
    codes.split(/\s+/).map((code) => [code, Number(exponent)] as const),
  ),
);

/** How many decimals the currency has, or undefined for a code that is not in the list. */
export function exponentOf(code: string): number | undefined {
  return EXPONENTS.get(code);
}

/** Every currency code that an amount may carry. */
export const currencyCodes: readonly string[] = [...EXPONENTS.keys()].sort();

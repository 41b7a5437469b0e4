/** Whether a text holds an account number (IBAN, ISO 13616) or a card number (ISO/IEC 7812) whose check digits are right. */
export function bankNumberIn(text: string): boolean {
  const accounts = text.match(/\b[A-Z]{2}\d{2}(?: ?[A-Z0-9]{4}){2,7}(?: ?[A-Z0-9]{1,3})?\b/g) ?? [];
  const cards = text.match(/\b\d(?:[ -]?\d){12,18}\b/g) ?? [];
  return accounts.some(isIban) || cards.some(isCard);
}

/** ISO 7064 MOD 97-10 over the number with its first four characters moved to the end. */
function isIban(written: string): boolean {
  const plain = written.replaceAll(' ', '');
  let rest = 0;
  for (const character of plain.slice(4) + plain.slice(0, 4))
    for (const digit of String(Number.parseInt(character, 36)))
      rest = (rest * 10 + Number(digit)) % 97;
  return rest === 1;
}

/** The sum of ISO/IEC 7812-1, annex B. */
function isCard(written: string): boolean {
  const digits = [...written.replace(/\D/g, '')].reverse().map(Number);
  const sum = digits.reduce((total, digit, index) => {
    const doubled = index % 2 === 1 ? digit * 2 : digit;
    return total + (doubled > 9 ? doubled - 9 : doubled);
  }, 0);
  return sum % 10 === 0 && sum > 0;
}

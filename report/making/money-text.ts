/** From here on a price is read in whole units. */
const WHOLE_FROM = 100

/** An amount of money as a column of prices shows it: two places below a hundred, whole above. Its currency stands in the heading. */
export function moneyText(amount: number): string {
  return amount.toFixed(Math.abs(amount) < WHOLE_FROM ? 2 : 0).replace('-', '−')
}

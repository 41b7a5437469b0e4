import type { Words } from '../keys.ts';
import { budget } from './money/budget.ts';
import { costs } from './money/costs.ts';
import { donor } from './money/donor.ts';
import { forecast } from './money/forecast.ts';
import { orders } from './money/orders.ts';
import { partCosts } from './money/part-costs.ts';
import { sums } from './money/sums.ts';
import { uncertainty } from './money/uncertainty.ts';

export const money: Words['money'] = {
  costs,
  partCosts,
  donor,
  budget,
  forecast,
  orders,
  sums,
  uncertainty,
  categories: {
    vehicle: 'Maschine',
    part: 'Teil',
    material: 'Material',
    consumable: 'Verbrauchsmaterial',
    tool: 'Werkzeug',
    service: 'Fremdleistung',
    transport: 'Transport',
    fee: 'Gebühr',
    other: 'Sonstiges',
  },
  kinds: {
    payment: 'Zahlung',
    deposit: 'Anzahlung oder Pfand',
    sale: 'Verkauf',
    scrap: 'Schrott',
    refund: 'Erstattung',
    'deposit-back': 'Pfand zurück',
    gift: 'Geschenk',
    trade: 'Tausch',
  },
  notTied: {
    phase: 'keiner Phase zugeordnet',
    source: 'keiner Herkunft zugeordnet',
  },
  range: (low, high) => `${low} bis ${high}`,
  atRate: (amount, rate) => `${amount} zum Kurs ${rate}`,
};

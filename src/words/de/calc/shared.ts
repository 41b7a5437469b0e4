/** Loads of the four wheels, as the driver sees left and right. */
export const corners = {
  W_LF: 'Last am linken Vorderrad',
  W_RF: 'Last am rechten Vorderrad',
  W_LR: 'Last am linken Hinterrad',
  W_RR: 'Last am rechten Hinterrad',
};

export const loadedAsUsed =
  'das Fahrzeug ist beladen wie im Gebrauch: Kraftstoff, Fahrer, Werkzeug';

export const cornerAssumptions = [
  'der Boden unter den vier Waagen ist eben und waagerecht, die Reifen haben ihren Druck und die Federung hat sich gesetzt',
  loadedAsUsed,
];

export const noLoad = 'kein Rad trägt eine Last';

export const atRunningHeight =
  'gemessen in der Höhenlage, in der die Maschine läuft, mit ihrer Beladung';

export const noSlip = 'kein Schlupf in Kupplung oder Drehmomentwandler';

/** The caution that stands beside every result a wearer might trust. */
export const caution =
  'Fingerwright calculates; it does not test and does not certify. Build a prototype and load it on the bench, well past the loads above, ' +
  'before anybody wears it. Have it fitted by a licensed prosthetist, and keep the local rules for medical devices.'

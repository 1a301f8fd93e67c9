/** Facts on rules for devices, for orientation, each with its date and whether it was read or is recalled. */
export const orientation: readonly { readonly fact: string; readonly date: string; readonly source: string }[] = [
  {
    fact: 'United States: an external limb prosthetic component, such as a mechanical hand, hook, wrist unit or cable, is a class I device (21 CFR 890.3420). It is exempt from premarket notification within the limits of 890.9, and from part 820 except for records (820.180) and complaint files (820.198).',
    date: 'as amended 25 July 2001 (66 FR 38816)',
    source: 'eCFR text in stored copies, read',
  },
  {
    fact: 'United States: the Quality Management System Regulation rewrites part 820 around ISO 13485. Look the two section numbers above up again before you rely on them.',
    date: 'effective 2 February 2026',
    source: 'from memory',
  },
  {
    fact: 'European Union: a non-invasive device falls into class I by rule 1 of Annex VIII; custom-made devices follow Article 52(8) and Annex XIII of Regulation (EU) 2017/745.',
    date: '2017',
    source: 'from memory',
  },
  {
    fact: 'A kit that is made in series, in sizes, is not a custom-made device: custom-made is what is made to the written prescription of an authorised person for one named patient.',
    date: '2017',
    source: 'Regulation (EU) 2017/745, Article 2(3), from memory',
  },
  {
    fact: 'ISO 22523 has general requirements and tests for external limb prostheses: risk, strength, materials, information. ISO 10328 sets loads and 3 million cycles for lower limbs only. There is no such table of loads for fingers: the maker sets and justifies them from the intended use.',
    date: 'ISO 22523:2006, ISO 10328:2016',
    source: 'titles and scopes, from memory',
  },
  {
    fact: 'ISO 13485 asks for a device file (4.2.3) and for records that are kept for the device’s lifetime, at least two years from release (4.2.5). ISO 14971 gives the order of risk management that the risk table follows.',
    date: 'ISO 13485:2016, ISO 14971:2019',
    source: 'from memory',
  },
]

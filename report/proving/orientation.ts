/** Facts on rules for devices, for orientation: each with its date, its source, and whether somebody here has read it. */

/** How a fact is known: from the text or its publisher, from others who quote it, or recalled. */
export type FactKnown = 'read' | 'read as quoted elsewhere' | 'from memory'

/** One fact. */
export interface OrientationFact {
  readonly fact: string
  /** Edition, or the day from which it holds. */
  readonly date: string
  readonly source: string
  readonly known: FactKnown
}

/** What decides beside these facts stands in `localRules`. */
export const orientation: readonly OrientationFact[] = [
  {
    fact: 'United States: an external limb prosthetic component, such as a mechanical hand, hook, wrist unit or cable, is a class I device (21 CFR 890.3420). It is exempt from premarket notification within the limits of 890.9, and by that text from part 820 except for records (820.180) and complaint files (820.198).',
    date: 'as amended 25 July 2001 (66 FR 38816)',
    source: 'eCFR text in stored copies',
    known: 'read',
  },
  {
    fact: 'United States: part 820 takes ISO 13485:2016 in by reference. Records, with those of complaints, are in 820.35 now, beside 4.2.5 and 8.2.2 of the standard; 820.180 and 820.198 are gone. Look up what 890.3420 names instead of them before you rely on it.',
    date: 'final rule of 2 February 2024 (89 FR 7496), in force since 2 February 2026',
    source: 'text of 820.35 in a copy; the day of coming into force as others quote it',
    known: 'read as quoted elsewhere',
  },
  {
    fact: 'United States: what the law calls a custom device (section 520(b) of the Federal Food, Drug, and Cosmetic Act) is made to the order of a physician or dentist for one person, is not generally available, and is limited to five units a year of a type: a kit made in series is none.',
    date: 'guidance of September 2014',
    source: 'the agency’s page on its guidance, and summaries of it',
    known: 'read as quoted elsewhere',
  },
  {
    fact: 'European Union: a non-invasive device falls into class I by rule 1 of Annex VIII of Regulation (EU) 2017/745.',
    date: '2017',
    source: 'Regulation (EU) 2017/745, Annex VIII',
    known: 'from memory',
  },
  {
    fact: 'European Union: a custom-made device is made to the written prescription of an authorised person, with design characteristics under that person’s responsibility, for one patient alone. What is mass-produced and adapted, and what is mass-produced by industrial processes to prescriptions, is not custom-made: a kit made in series, in sizes, is not.',
    date: '2017',
    source: 'Regulation (EU) 2017/745, Article 2(3)',
    known: 'read as quoted elsewhere',
  },
  {
    fact: 'European Union: custom-made devices follow Article 52(8) and Annex XIII.',
    date: '2017',
    source: 'the European Commission’s page on custom-made devices',
    known: 'read',
  },
  {
    fact: 'European Union: for a class I device that is not custom-made the manufacturer keeps technical documentation (Annexes II and III), declares conformity (Article 19), registers, and watches it in use; no notified body looks at it unless it measures, is sterile or is reused in surgery.',
    date: '2017',
    source: 'Regulation (EU) 2017/745',
    known: 'from memory',
  },
  {
    fact: 'ISO 22523 has requirements and test methods for external limb prostheses: strength, materials, restrictions on use, risk, information. A new edition is being drafted.',
    date: 'ISO 22523:2006',
    source: 'its scope, in a catalogue of standards',
    known: 'read',
  },
  {
    fact: 'ISO 10328 has static and cyclic strength tests for lower-limb prostheses only.',
    date: 'ISO 10328:2016',
    source: 'its scope, in a catalogue of standards',
    known: 'read',
  },
  {
    fact: 'No standard has such a table of loads for fingers: the maker sets and justifies them from the intended use.',
    date: 'as known in 2026',
    source: 'none was found',
    known: 'from memory',
  },
  {
    fact: 'ISO 13485 asks for a device file (4.2.3) and for records that are kept for the device’s lifetime, at least two years from release (4.2.5).',
    date: 'ISO 13485:2016',
    source: 'lists of its required records',
    known: 'read as quoted elsewhere',
  },
  {
    fact: 'ISO 14971 gives the order of risk management that the risk table follows: analysis, evaluation, control, its check, what is left. What is left of all risks together, the review before release, and what production and use teach are the maker’s work beside the table; the field log collects for the last.',
    date: 'ISO 14971:2019',
    source: 'clauses 5 to 7, and 8 to 10',
    known: 'from memory',
  },
]

declare const FINGERWRIGHT: string

/** Name and version that every result carries, as the page was built. */
export const engineName: string = FINGERWRIGHT

import project from '../package.json' with { type: 'json' }

/** Name and version that every result carries, e.g. `fingerwright 0.1.0`. */
export const engineName = `${project.name} ${project.version}`

/** The version alone. */
export const version = project.version

/** The server's door: a design file's bytes to an answer, and the loopback server around it. */
export { answerDesign, type DesignAnswer } from './answer.ts'
export { createApp, type Given } from './app.ts'
export { type DesignShelf, designFilesIn, designName, shelve } from './design-shelf.ts'
export { documentLimit_bytes, documentText } from './document-text.ts'
export { engineName, version } from './engine-name.ts'
export { type Port, type Running, startServer } from './listen.ts'
export { loadPage, type PageFile, type PageFiles } from './page-files.ts'

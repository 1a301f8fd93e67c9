import '@fontsource/source-serif-4/latin-400.css'
import '@fontsource/source-serif-4/latin-400-italic.css'
import '@fontsource/source-serif-4/latin-600.css'
import '@fontsource/source-serif-4/greek-400.css'
import '@fontsource/source-sans-3/latin-400.css'
import '@fontsource/source-sans-3/latin-400-italic.css'
import '@fontsource/source-sans-3/latin-600.css'
import '@fontsource/source-sans-3/greek-400.css'
import './styles/layers.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { drawingStyle } from '../report/index.ts'
import { Notebook } from './notebook.tsx'
import { applyTheme } from './state/theme.ts'

const sheet = new CSSStyleSheet()
sheet.replaceSync(drawingStyle)
document.adoptedStyleSheets = [sheet]
applyTheme()

const place = document.getElementById('notebook')
if (place === null) throw new Error('index.html has no place for the page')
createRoot(place).render(
  <StrictMode>
    <Notebook />
  </StrictMode>,
)

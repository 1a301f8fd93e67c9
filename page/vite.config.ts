import { readFileSync } from 'node:fs'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

const { name, version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'))

// Everything is a file of our own under /assets: the page's policy allows no inline script, style or font.
export default defineConfig({
  plugins: [react()],
  define: { FINGERWRIGHT: JSON.stringify(`${name} ${version}`) },
  build: {
    rolldownOptions: { input: ['index.html', 'sign-in.html'] },
    outDir: '../build/page',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    target: 'es2023',
  },
  worker: { format: 'es' },
})

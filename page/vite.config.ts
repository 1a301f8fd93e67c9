import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

// Everything is a file of our own under /assets: the page's policy allows no inline script, style or font.
export default defineConfig({
  plugins: [react()],
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

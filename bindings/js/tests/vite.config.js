export default {
  root: process.cwd(),
  base: './',
  build: {
    outDir: 'out',
    target: 'es2022',
    assetsInlineLimit: 0,
    rollupOptions: {
      input: ['page.js', 'scalar-page.js'],
      preserveEntrySignatures: 'exports-only',
      output: { entryFileNames: '[name].js' },
    },
  },
}

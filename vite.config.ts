import { join } from 'node:path';
import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';
import { keptFiles } from './setup/kept-files.mjs';
import { headers, isolatingHeaders, metaPolicy } from './src/worker/headers.ts';

const root = import.meta.dirname;

export default defineConfig({
  root: join(root, 'src'),
  publicDir: join(root, 'public'),
  // Relative addresses, so that the built files work in any folder of any host.
  base: './',
  plugins: [
    preact(),
    {
      name: 'page-policy',
      apply: 'build',
      transformIndexHtml: () => [
        {
          tag: 'meta',
          attrs: { 'http-equiv': 'Content-Security-Policy', content: metaPolicy },
          injectTo: 'head-prepend',
        },
      ],
    },
    keptFiles('service-worker.js'),
  ],
  build: {
    outDir: join(root, 'dist'),
    emptyOutDir: true,
    target: 'es2022',
    // Data addresses would hide sounds and fonts in scripts, where the size of the first load counts them.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      input: {
        first: join(root, 'src/index.html'),
        'service-worker': join(root, 'src/worker/service-worker.ts'),
      },
      output: {
        entryFileNames: ({ name }) =>
          name === 'service-worker' ? 'service-worker.js' : 'assets/[name]-[hash].js',
        chunkFileNames: 'assets/[name]-[hash].js',
        assetFileNames: 'assets/[name]-[hash][extname]',
      },
    },
  },
  server: { headers: { ...isolatingHeaders } },
  preview: { host: '127.0.0.1', port: 4173, headers: { ...headers } },
});

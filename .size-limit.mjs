import { readFileSync } from 'node:fs';

// The page itself names all it loads at first: its script, that script's own imports (as preloads) and its styles.
const page = readFileSync(new URL('dist/index.html', import.meta.url), 'utf8');
const linked = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.(?:js|css))"/g)].map(([, file]) => file);

export default [
  {
    name: 'first load: page, style and script',
    path: ['dist/index.html', ...linked.map((file) => `dist/${file}`)],
    limit: '20 kB',
    gzip: true,
  },
  {
    name: 'all pages, styles and scripts',
    path: 'dist/**/*.{html,css,js}',
    limit: '245 kB',
    gzip: true,
  },
  {
    name: 'everything that is kept for offline use',
    path: 'dist/**/*',
    limit: '410 kB',
    gzip: true,
  },
];

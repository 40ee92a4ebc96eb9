// Cuts the two weights down to the letters the app can show. Needs pyftsubset (Debian: fonttools, python3-brotli).
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const letters = [
  'U+0020-007E', // ASCII, with + and =
  'U+00A0-00FF', // Latin-1, with × and ÷
  'U+2013-2014,U+2018-2019,U+201C-201D,U+2026', // dashes, quotation marks, ellipsis
  'U+2212', // −
];

for (const weight of [400, 600]) {
  const source = import.meta.resolve(
    `@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-${weight}-normal.woff2`,
  );
  execFileSync('pyftsubset', [
    fileURLToPath(source),
    `--unicodes=${letters.join(',')}`,
    '--layout-features=*',
    '--flavor=woff2',
    `--output-file=${fileURLToPath(new URL(`atkinson-next-${weight}.woff2`, import.meta.url))}`,
  ]);
}

// Cuts the two weights down to the letters the app can show and opens their zero, which a child would take for a letter
// crossed out. Needs pyftsubset and its library (Debian: fonttools, python3-brotli).
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const letters = [
  'U+0020-007E', // ASCII, with + and =
  'U+00A0-00FF', // Latin-1, with × and ÷
  'U+2013-2014,U+2018-2019,U+201C-201D,U+2026', // dashes, quotation marks, ellipsis
  'U+2212', // −
];

// The system's own Python: Debian's fonttools is not there for another.
const python = '/usr/bin/python3';
const openZero = fileURLToPath(new URL('open-zero.py', import.meta.url));

for (const [weight, style] of Object.entries({ 400: 'Regular', 600: 'SemiBold' })) {
  const source = import.meta.resolve(
    `@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-${weight}-normal.woff2`,
  );
  const file = fileURLToPath(new URL(`sumstitch-face-${weight}.woff2`, import.meta.url));
  execFileSync('pyftsubset', [
    fileURLToPath(source),
    `--unicodes=${letters.join(',')}`,
    '--layout-features=*',
    '--flavor=woff2',
    `--output-file=${file}`,
  ]);
  execFileSync(python, [openZero, file, style]);
}

/** Which parts of `src` each part may import from, besides itself. */
export const arrows: Readonly<Record<string, readonly string[]>> = {
  main: ['child', 'parent', 'paper', 'demo', 'state', 'log', 'core', 'ui', 'sound', 'worker'],
  child: ['state', 'core', 'ui'],
  parent: ['state', 'readings', 'core', 'ui', 'paper'],
  paper: ['state', 'readings', 'core', 'ui'],
  demo: ['state', 'log', 'core'],
  state: ['log', 'record-file', 'readings', 'core', 'sound', 'worker'],
  log: ['core', 'record-file'],
  readings: ['core'],
  'record-file': ['core'],
  command: ['readings', 'record-file'],
  core: [],
  ui: ['core'],
  sound: [],
  worker: [],
};

/** Which packages each part may use. What is named for one part only is wrapped there and nowhere else. */
export const packages: Readonly<Record<string, readonly string[]>> = {
  main: ['preact', '@preact/signals'],
  child: ['preact', '@preact/signals'],
  parent: ['preact', '@preact/signals', 'date-fns', 'd3-scale', 'd3-shape', 'd3-array', 'papaparse'],
  paper: ['preact', '@preact/signals', 'date-fns'],
  demo: ['@preact/signals', 'date-fns'],
  state: ['@preact/signals', 'date-fns'],
  log: ['idb-keyval', 'valibot'],
  readings: ['date-fns', 'simple-statistics'],
  'record-file': ['valibot'],
  command: [],
  core: ['date-fns', 'pure-rand', 'simple-statistics', 'valibot'],
  ui: ['preact', '@preact/signals'],
  sound: ['howler'],
  worker: [],
};

/** Parts that no first load may bring along: each is fetched when it is asked for. */
export const lazyParts: readonly string[] = ['parent', 'paper', 'demo', 'record-file'];

/** Packages that no first load may bring along: each is fetched while idle, or with a lazy part. */
export const lazyPackages: readonly string[] = ['howler', 'papaparse', 'simple-statistics'];

import { expect, test } from 'vitest';
import { headers, metaPolicy } from '../../src/worker/headers';

const policy = headers['Content-Security-Policy'] ?? '';
const directives = new Map(
  policy.split('; ').map((one) => {
    const [name = '', ...values] = one.split(' ');
    return [name, values] as const;
  }),
);

test('the two headers that isolate a page are there (HTML standard, cross-origin isolation)', () => {
  expect(headers['Cross-Origin-Opener-Policy']).toBe('same-origin');
  expect(headers['Cross-Origin-Embedder-Policy']).toBe('require-corp');
});

test('the policy begins from nothing and lets in no other origin, no inline code and no evaluation', () => {
  expect(directives.get('default-src')).toEqual(["'none'"]);
  const allowed = new Set([...directives.values()].flat());
  expect([...allowed].sort()).toEqual(["'none'", "'self'", 'blob:', 'data:']);
});

test('only pictures and sounds may come from data', () => {
  const withData = [...directives].filter(([, values]) => values.includes('data:')).map(([name]) => name);
  expect(withData).toEqual(['img-src', 'media-src']);
});

test('the page states the same policy but for the directive that is void in a meta element', () => {
  expect(`${metaPolicy}; frame-ancestors 'none'`).toBe(policy);
});

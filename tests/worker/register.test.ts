import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

class FakeWorker extends EventTarget {
  readonly posted: unknown[] = [];
  postMessage(message: unknown) {
    this.posted.push(message);
  }
}

class FakeRegistration extends EventTarget {
  active: FakeWorker | null = null;
  waiting: FakeWorker | null = null;
  installing: FakeWorker | null = null;
  update = vi.fn(() => Promise.resolve());
}

class FakeContainer extends EventTarget {
  controller: FakeWorker | null = null;
  registration = new FakeRegistration();
  register = vi.fn(() => Promise.resolve(this.registration));
}

let container: FakeContainer;
let reload: ReturnType<typeof vi.fn>;
let news: { onControlled: () => void; onWaiting: () => void };

beforeEach(() => {
  vi.resetModules();
  vi.stubEnv('DEV', false);
  container = new FakeContainer();
  reload = vi.fn();
  const kept = new Map<string, string>();
  vi.stubGlobal('navigator', { serviceWorker: container });
  vi.stubGlobal('location', { reload });
  vi.stubGlobal('crossOriginIsolated', false);
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => kept.set(key, value),
  });
  news = { onControlled: vi.fn(), onWaiting: vi.fn() };
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.unstubAllEnvs();
});

const load = () => import('../../src/worker/register');

describe('registering', () => {
  test('a browser without service workers works on without one', async () => {
    vi.stubGlobal('navigator', {});
    expect(await (await load()).registerWorker(news)).toBe(false);
  });

  test('a browser that refuses it works on without one', async () => {
    container.register.mockRejectedValue(new Error('refused'));
    expect(await (await load()).registerWorker(news)).toBe(false);
  });

  test('on the first visit the page hears when it has its worker', async () => {
    expect(await (await load()).registerWorker(news)).toBe(true);
    expect(news.onControlled).not.toHaveBeenCalled();
    container.dispatchEvent(new Event('controllerchange'));
    expect(news.onControlled).toHaveBeenCalledOnce();
    expect(reload).not.toHaveBeenCalled();
  });

  test('on a later visit it hears at once', async () => {
    container.controller = new FakeWorker();
    await (await load()).registerWorker(news);
    expect(news.onControlled).toHaveBeenCalledOnce();
  });
});

describe('a new version', () => {
  test('the first worker ever is not one', async () => {
    await (await load()).registerWorker(news);
    const worker = new FakeWorker();
    container.registration.installing = worker;
    container.registration.dispatchEvent(new Event('updatefound'));
    container.registration.waiting = worker;
    worker.dispatchEvent(new Event('statechange'));
    expect(news.onWaiting).not.toHaveBeenCalled();
  });

  test('one that was waiting already is told', async () => {
    container.registration.active = new FakeWorker();
    container.registration.waiting = new FakeWorker();
    await (await load()).registerWorker(news);
    expect(news.onWaiting).toHaveBeenCalledOnce();
  });

  test('one that is fetched while the page is open is told when it is ready, not before', async () => {
    container.registration.active = new FakeWorker();
    await (await load()).registerWorker(news);
    const worker = new FakeWorker();
    container.registration.installing = worker;
    container.registration.dispatchEvent(new Event('updatefound'));
    expect(news.onWaiting).not.toHaveBeenCalled();
    container.registration.waiting = worker;
    worker.dispatchEvent(new Event('statechange'));
    expect(news.onWaiting).toHaveBeenCalledOnce();
  });

  test('it is taken only when asked for, and the page reloads with it', async () => {
    const waiting = new FakeWorker();
    container.registration.active = new FakeWorker();
    container.registration.waiting = waiting;
    const { registerWorker, takeOver } = await load();
    await registerWorker(news);
    expect(waiting.posted).toEqual([]);
    expect(takeOver()).toBe(true);
    expect(waiting.posted).toEqual([{ type: 'take-over' }]);
    expect(reload).not.toHaveBeenCalled();
    container.dispatchEvent(new Event('controllerchange'));
    expect(reload).toHaveBeenCalledOnce();
  });

  test('there is nothing to take where none waits', async () => {
    const { registerWorker, takeOver } = await load();
    expect(takeOver()).toBe(false);
    await registerWorker(news);
    expect(takeOver()).toBe(false);
  });

  test('looking for one while offline is no error', async () => {
    const { registerWorker, lookForUpdate } = await load();
    await registerWorker(news);
    container.registration.update.mockRejectedValue(new Error('offline'));
    await expect(lookForUpdate()).resolves.toBeUndefined();
  });
});

describe('isolating the page of the first visit', () => {
  test('reloads once and never again in that tab', async () => {
    container.controller = new FakeWorker();
    const { reloadToIsolate } = await load();
    expect(reloadToIsolate()).toBe(true);
    expect(reloadToIsolate()).toBe(false);
    expect(reload).toHaveBeenCalledOnce();
  });

  test('not without a worker, which alone would make a difference', async () => {
    expect((await load()).reloadToIsolate()).toBe(false);
  });

  test('not where the page is isolated already', async () => {
    container.controller = new FakeWorker();
    vi.stubGlobal('crossOriginIsolated', true);
    expect((await load()).reloadToIsolate()).toBe(false);
  });

  test('not where the attempt could not be remembered', async () => {
    container.controller = new FakeWorker();
    vi.stubGlobal('sessionStorage', {
      getItem: () => {
        throw new Error('storage refused');
      },
    });
    expect((await load()).reloadToIsolate()).toBe(false);
    expect(reload).not.toHaveBeenCalled();
  });
});

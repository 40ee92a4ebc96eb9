import type { LogRecord } from '../core/record/record';

/** What another tab added; `null` when it is simplest to read everything again. */
export type LogNews = readonly LogRecord[] | null;

/** Word between the tabs that have the same log open. */
export interface News {
  tell(news: LogNews): void;
  /** Hears of what other tabs did; returns what ends it. */
  listen(hear: (news: LogNews) => void): () => void;
  close(): void;
}

export function openNews(name: string): News {
  // Absent in a few embedded browsers: then a tab learns of the other's records when it is opened again.
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(`${name}/news`);
  return {
    tell: (news) => channel?.postMessage(news),
    listen(hear) {
      const onMessage = ({ data }: MessageEvent<LogNews>) => hear(data);
      channel?.addEventListener('message', onMessage);
      return () => channel?.removeEventListener('message', onMessage);
    },
    close: () => channel?.close(),
  };
}

import type { Fault } from './wire';

/** What comes of a call. 'lost': nothing came back, so that it may or may not have been done. */
export type Reply<T> =
    { kind: 'done'; value: T } | { kind: 'fault'; fault: Fault } | { kind: 'lost' };

export interface Caller {
    call<T>(path: string, body: unknown): Promise<Reply<T>>;
}

/** The clock of who waits, so that a test can hold it. */
export interface Timer {
    after(ms: number, run: () => void): () => void;
}

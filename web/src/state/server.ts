import type { Caller, Reply } from '../core/caller';
import { Lines } from '../core/lines';
import type { Fault } from '../core/wire';

/** How a stream came to its end. */
export type Ended = { kind: 'ended' } | { kind: 'fault'; fault: Fault } | { kind: 'lost' };

/** The server, spoken to by `fetch` with the key in a header. */
export class Server implements Caller {
    key: string | undefined;

    constructor(private readonly fetcher: typeof fetch = (...asked) => fetch(...asked)) {}

    async call<T>(path: string, body: unknown): Promise<Reply<T>> {
        try {
            const response = await this.post(path, body);
            if (!response.ok) return { kind: 'fault', fault: await faultOf(response) };
            return { kind: 'done', value: (await response.json()) as T };
        } catch {
            return { kind: 'lost' };
        }
    }

    /** As a file: for what is saved and not read here. */
    async file(path: string, body: unknown): Promise<Reply<Blob>> {
        try {
            const response = await this.post(path, body);
            if (!response.ok) return { kind: 'fault', fault: await faultOf(response) };
            return { kind: 'done', value: await response.blob() };
        } catch {
            return { kind: 'lost' };
        }
    }

    /** One object a line, as they come. Aborting the signal closes the stream, which stops the work. */
    async stream(
        path: string,
        body: unknown,
        signal: AbortSignal,
        see: (line: unknown) => void,
    ): Promise<Ended> {
        try {
            const response = await this.post(path, body, signal);
            if (!response.ok) return { kind: 'fault', fault: await faultOf(response) };
            if (response.body === null) return { kind: 'lost' };
            const lines = new Lines();
            const reader = response.body.getReader();
            const decoder = new TextDecoder();
            for (;;) {
                const { done, value } = await reader.read();
                if (done) break;
                for (const line of lines.push(decoder.decode(value, { stream: true }))) {
                    see(JSON.parse(line));
                }
            }
            return lines.end().trim() === '' ? { kind: 'ended' } : { kind: 'lost' };
        } catch {
            return { kind: 'lost' };
        }
    }

    /**
     * A call that was under way with the key of the run before, and was refused for it, goes again with
     * the one that came meanwhile: refused, it has done nothing, and nobody else would ask again.
     */
    private async post(path: string, body: unknown, signal?: AbortSignal): Promise<Response> {
        const { key } = this;
        const response = await this.send(path, body, signal);
        return response.status === 403 && key !== this.key
            ? this.send(path, body, signal)
            : response;
    }

    private send(path: string, body: unknown, signal?: AbortSignal): Promise<Response> {
        return this.fetcher(path, {
            method: 'POST',
            headers: {
                'Content-Type': 'application/json',
                ...(this.key === undefined ? {} : { 'Liftwright-Key': this.key }),
            },
            body: JSON.stringify(body),
            cache: 'no-store',
            credentials: 'omit',
            redirect: 'error',
            ...(signal === undefined ? {} : { signal }),
        });
    }
}

async function faultOf(response: Response): Promise<Fault> {
    try {
        const read = (await response.json()) as Partial<Fault>;
        if (typeof read.fault === 'string' && typeof read.sentence === 'string') {
            return read as Fault;
        }
    } catch {
        // Not ours to read: told as it came.
    }
    return {
        fault: response.status === 429 ? 'too many' : 'internal',
        sentence: `The server answered with status ${response.status}.`,
    };
}

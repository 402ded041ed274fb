import type { Caller, Reply, Timer } from '../src/core/caller';
import type { Keep, Unsent } from '../src/core/unsent';
import type { Change, RigDocument } from '../src/core/wire';

/** The same numbers for the same seed: mulberry32, from memory. */
export function seeded(seed: number): () => number {
    let state = seed;
    return () => {
        state = (state + 0x6d2b79f5) | 0;
        let t = Math.imul(state ^ (state >>> 15), 1 | state);
        t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
        return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
    };
}

/** A clock that stands until it is moved. */
export class HeldTimer implements Timer {
    private now = 0;
    private waiting: { at: number; run: () => void }[] = [];

    after(ms: number, run: () => void): () => void {
        const one = { at: this.now + ms, run };
        this.waiting.push(one);
        return () => {
            this.waiting = this.waiting.filter(each => each !== one);
        };
    }

    async pass(ms: number): Promise<void> {
        const end = this.now + ms;
        for (;;) {
            await settle();
            const next = this.waiting.filter(each => each.at <= end).sort((a, b) => a.at - b.at)[0];
            if (next === undefined) break;
            this.now = next.at;
            this.waiting = this.waiting.filter(each => each !== next);
            next.run();
        }
        this.now = end;
    }
}

/** Lets everything that is ready run. */
export async function settle(): Promise<void> {
    for (let turn = 0; turn < 40; turn++) await Promise.resolve();
}

export class MemoryKeep implements Keep {
    readonly held = new Map<string, string>();

    put(unsent: Unsent): void {
        this.held.set(unsent.rig, JSON.stringify(unsent));
    }

    drop(rig: string): void {
        this.held.delete(rig);
    }

    get(rig: string): Unsent | undefined {
        const held = this.held.get(rig);
        return held === undefined ? undefined : (JSON.parse(held) as Unsent);
    }
}

/**
 * A server of one document that keeps to the contract, with an outer world that misbehaves: replies can be
 * lost before or after the deed, other programs write, and it can be dead for a while. A change of kind
 * 'add' appends a line; nothing else of a rig file is known here.
 */
export class FakeBay implements Caller {
    /** What becomes of the next calls: 'before' never arrives, 'after' is done and its reply is lost. */
    fate: (path: string) => 'well' | 'before' | 'after' | 'key' = () => 'well';
    readonly calls: string[] = [];
    disk: string;
    private past: { text: string; label: string }[] = [];
    private future: { text: string; label: string }[] = [];
    private count = 0;
    private last = '';
    private conflict: string | undefined;

    constructor(public text: string) {
        this.disk = text;
    }

    document(): RigDocument {
        if (this.text !== this.last) this.count++;
        this.last = this.text;
        const undo = this.past.at(-1)?.label;
        const redo = this.future.at(-1)?.label;
        return {
            rig: 'rig.yaml',
            revision: `r${this.count}`,
            text: this.text,
            saved: this.text === this.disk,
            readable: true,
            problems: [],
            parts: [],
            outline: [],
            ...(undo === undefined ? {} : { undo }),
            ...(redo === undefined ? {} : { redo }),
            ...(this.conflict === undefined
                ? {}
                : { conflict: { diskText: this.conflict, sentence: 'another program wrote it' } }),
        };
    }

    /** Another tab changes the document. */
    otherTab(text: string): void {
        this.put(text, 'typed elsewhere');
    }

    /** Another program writes the file, and its change cannot be merged. */
    otherProgram(text: string): void {
        this.conflict = text;
    }

    async call<T>(path: string, body: unknown): Promise<Reply<T>> {
        this.calls.push(path);
        await Promise.resolve();
        const fate = this.fate(path);
        if (fate === 'before') return { kind: 'lost' };
        if (fate === 'key') return { kind: 'fault', fault: { fault: 'key', sentence: 'no' } };
        const reply = this.answer(path, body as Asked) as Reply<T>;
        await Promise.resolve();
        return fate === 'after' ? { kind: 'lost' } : reply;
    }

    private answer(path: string, asked: Asked): Reply<RigDocument> {
        const now = this.document();
        if (path === '/api/document') return { kind: 'done', value: now };
        const old = asked.base !== now.revision;
        if (old && path !== '/api/change') {
            return {
                kind: 'fault',
                fault: { fault: 'stale', sentence: 'It was changed meanwhile.', document: now },
            };
        }
        switch (path) {
            case '/api/text':
                this.put(asked.text ?? '', 'typed');
                break;
            case '/api/change':
                for (const change of asked.changes ?? []) {
                    if (change.kind === 'add')
                        this.put(`${this.text}${change.value}\n`, asked.label ?? '');
                }
                break;
            case '/api/undo':
                this.step(this.past, this.future);
                break;
            case '/api/redo':
                this.step(this.future, this.past);
                break;
            case '/api/save':
                this.disk = this.text;
                break;
            case '/api/resolve':
                if (asked.take === 'disk') this.put(this.conflict ?? this.text, 'take the disk');
                this.conflict = undefined;
                break;
        }
        return { kind: 'done', value: this.document() };
    }

    private put(text: string, label: string): void {
        if (text === this.text) return;
        this.past.push({ text: this.text, label });
        this.future = [];
        this.text = text;
    }

    private step(from: { text: string; label: string }[], to: typeof from): void {
        const one = from.pop();
        if (one === undefined) return;
        to.push({ text: this.text, label: one.label });
        this.text = one.text;
    }
}

interface Asked {
    base?: string;
    text?: string;
    changes?: Change[];
    label?: string;
    take?: string;
}
